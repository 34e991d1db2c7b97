"""The round wire: exact Bessel solution by mpmath (complex argument), and the catalogue of wires used here.

Internal impedance per metre   Z' = rho/(pi a^2) * (ka/2) J0(ka)/J1(ka),  k = (1-j)/delta, time factor exp(+jwt).
Loss in a uniform transverse field of peak H   P' = w mu0 pi a^2 |Im(J2(ka)/J0(ka))| H^2.
(W. R. Smythe, Static and Dynamic Electricity, ch. 10; S. Ramo, J. R. Whinnery, T. Van Duzer, ch. 4.)
"""
import math
import mpmath as mp

MU0 = 4e-7 * math.pi
RHO20 = 1.7241e-8
ALPHA20 = 0.00393
# name: (conductor diameter, insulated diameter) in metres
WIRES = {
    'awg12': (2.053e-3, 4.3e-3), 'awg14': (1.628e-3, 3.8e-3), 'awg16': (1.291e-3, 3.4e-3), 'awg18': (1.024e-3, 2.9e-3),
    'mm2-1.5': (1.382e-3, 3.3e-3), 'mm2-2.5': (1.784e-3, 3.9e-3),
}


def resistivity(temperature_C=20):
    return RHO20 * (1 + ALPHA20 * (temperature_C - 20))


def skin_depth(frequency, rho=RHO20):
    return math.sqrt(rho / (math.pi * frequency * MU0))


def bessel_ratios(a_over_delta):
    """(J0/J1, J2/J0) at ka = (1-j) a/delta, 30 digits inside."""
    with mp.workdps(40):
        ka = mp.mpc(1, -1) * mp.mpf(a_over_delta)
        j0, j1, j2 = (mp.besselj(n, ka) for n in (0, 1, 2))
        return j0 / j1, j2 / j0, (ka / 2) * j0 / j1


def dc_resistance(diameter, rho=RHO20):
    """ohm/m"""
    return rho / (math.pi * diameter ** 2 / 4)


def internal_impedance(diameter, frequency, rho=RHO20):
    """(R', L') per metre: with skin effect."""
    z = complex(bessel_ratios(diameter / 2 / skin_depth(frequency, rho))[2]) * dc_resistance(diameter, rho)
    return z.real, z.imag / (2 * math.pi * frequency)


def transverse_loss(diameter, frequency, field_peak, rho=RHO20):
    """W/m of one wire in a uniform transverse AC field (A/m, peak)."""
    a = diameter / 2
    ratio = complex(bessel_ratios(a / skin_depth(frequency, rho))[1])
    return 2 * math.pi * frequency * MU0 * math.pi * a * a * abs(ratio.imag) * field_peak ** 2


def column_proximity(diameter, pitch, count, frequency, rho=RHO20):
    """ohm per metre of slot: all wires of one column together, the same current in each, beyond the skin effect.

    The field at a wire is that of the others as line currents. R' = 2 P' for a peak current of 1 A.
    """
    total = 0.0
    for i in range(count):
        h = sum(1 / (2 * math.pi * pitch * (i - j)) for j in range(count) if j != i)
        total += 2 * transverse_loss(diameter, frequency, abs(h), rho)
    return total
