"""bessel.json: the ratios of Bessel functions that the round wire needs, mpmath with 40 digits inside."""
from wire import bessel_ratios
from writing import write

X = [0.01, 0.05, 0.1, 0.3, 0.5, 1, 1.5, 2, 3, 4, 5, 7, 10, 15, 20, 30, 50]

cases = []
for x in X:
    j0j1, j2j0, half = bessel_ratios(x)
    cases.append({'aOverDelta': x,
                  'j0OverJ1': [float(j0j1.real), float(j0j1.imag)],
                  'halfKaJ0OverJ1': [float(half.real), float(half.imag)],
                  'j2OverJ0': [float(j2j0.real), float(j2j0.imag)]})
write('bessel.json', 'bessel.py',
      'mpmath.besselj with complex argument ka = (1-j)*a/delta, 40 digits; definitions as in NIST DLMF 10.2',
      1e-14, cases, digits=16,
      note='each value is [real, imaginary], correct to the last digit of a double; the tolerance is relative to the modulus')
