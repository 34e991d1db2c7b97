import { it } from 'vitest';
import { addLanes, moveLanePoint, addMark, newMark } from '#plan/edits/index';
import { emptySite } from '#plan/read';
import { laneLinesScene, surfaceScene } from '#canvas/scenes/lanes';
import { LIGHT } from '#canvas/theme';
import { openEditor, withoutSnap } from '/work/main/tests/editor/hand';
it('speed', () => {
  let site = emptySite();
  for (let k=0;k<5;k++) { const m = addLanes(site,{line:{points:[[-40+k*70,-60],[-40+k*70,0],[40+k*70,40],[40+k*70,90]],radii:[0,30,30,0]},count:8,width:3.5,oppose:true}); if (typeof m==='string') throw new Error(m); site=m.site; }
  console.log('lanes', site.lanes.length, 'points', site.lanes.reduce((s,l)=>s+l.centreline.length,0));
  const view={centre:[0,0],scale:5,width:1000,height:800} as const;
  const time=(name:string,f:()=>void)=>{const t=performance.now();for(let i=0;i<10;i++)f();console.log(name,((performance.now()-t)/10).toFixed(2),'ms');};
  time('scene cold', ()=>{ const lanes=[...site.lanes]; surfaceScene(lanes,view,LIGHT); laneLinesScene(lanes,view,LIGHT); });
  time('scene warm', ()=>{ surfaceScene(site.lanes,view,LIGHT); laneLinesScene(site.lanes,view,LIGHT); });
  time('move corner', ()=>{ moveLanePoint(site,'lane3',1,[-41,1]); });
  const {editor,hand}=openEditor(site); editor.setViewport(view); 
  editor.select([{kind:'lane',id:'lane3'}]);
  const at=[...(site.lanes[2]!.bends!.points[1]!)] as [number,number];
  hand.send('down',at); let k=0;
  time('drag corner', ()=>{ k+=.1; hand.send('move',[at[0]+2+k,at[1]]); const s=editor.state.draft??editor.state.site; surfaceScene(s.lanes,view,LIGHT); laneLinesScene(s.lanes,view,LIGHT);});
  editor.cancel(); editor.setTool('lane'); editor.setDrawing({laneCount:8,bendRadius:20});
  hand.click([-60,-60]); hand.click([0,-60]);
  time('draw 8 lanes', ()=>{ k+=.1; hand.send('move',[0,k*10]); const s=editor.state.draft??editor.state.site; surfaceScene(s.lanes,view,LIGHT); laneLinesScene(s.lanes,view,LIGHT);});
});
