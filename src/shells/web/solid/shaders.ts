/**
 * First pass: of every point its normal, and whether it is outside, chosen, or the inside of a wall. The solids are
 * closed, so the inside of a wall is seen only where the plane has cut it: painted flat, it is the section.
 */
export const surfaceVertex = `
varying vec3 vNormal;
varying vec3 vPlace;
#include <clipping_planes_pars_vertex>
void main() {
  vec4 mvPosition = modelViewMatrix * vec4(position, 1.0);
  vNormal = normalMatrix * normal;
  vPlace = mvPosition.xyz;
  gl_Position = projectionMatrix * mvPosition;
  #include <clipping_planes_vertex>
}
`

export const surfaceFragment = `
varying vec3 vNormal;
varying vec3 vPlace;
uniform float kind;
#include <clipping_planes_pars_fragment>
void main() {
  #include <clipping_planes_fragment>
  vec3 flatNormal = normalize(cross(dFdx(vPlace), dFdy(vPlace)));
  if (!gl_FrontFacing) gl_FragColor = vec4(0.5, 0.5, 1.0, 0.25);
  else gl_FragColor = vec4(flatNormal * 0.5 + 0.5, kind);
}
`

export const screenVertex = `
varying vec2 vUv;
void main() {
  vUv = uv;
  gl_Position = vec4(position.xy, 0.0, 1.0);
}
`

/** Second pass: a line of ink where normal, kind or depth jumps; paper, section or ground between. */
export const screenFragment = `
varying vec2 vUv;
uniform sampler2D surface;
uniform sampler2D deep;
uniform vec2 pixel;
uniform float range;
uniform vec3 ink;
uniform vec3 accent;
uniform vec3 paper;
uniform vec3 solid;
vec4 at(vec2 d) { return texture2D(surface, vUv + d * pixel); }
float depthAt(vec2 d) { return texture2D(deep, vUv + d * pixel).x * range; }
void main() {
  vec4 here = at(vec2(0.0));
  float z = depthAt(vec2(0.0));
  float edge = 0.0;
  float chosen = here.a > 0.85 ? 1.0 : 0.0;
  for (int i = 0; i < 4; i++) {
    vec2 d = i == 0 ? vec2(1.0, 0.0) : i == 1 ? vec2(0.0, 1.0) : i == 2 ? vec2(-1.0, 0.0) : vec2(0.0, -1.0);
    vec4 there = at(d);
    float zThere = depthAt(d);
    float zBehind = depthAt(-d);
    if (abs(there.a - here.a) > 0.1) { edge = 1.0; if (there.a > 0.85) chosen = 1.0; }
    else if (here.a > 0.4) {
      float bend = 1.0 - dot(here.rgb * 2.0 - 1.0, there.rgb * 2.0 - 1.0);
      edge = max(edge, smoothstep(0.09, 0.22, bend));
      // On a flat face depth runs on evenly: only what departs from that is a step.
      float step = abs(zThere + zBehind - 2.0 * z);
      edge = max(edge, smoothstep(0.0025, 0.006, step));
    }
  }
  vec3 ground = here.a > 0.4 ? paper : here.a > 0.1 ? solid : paper;
  vec3 line = chosen > 0.5 ? accent : ink;
  gl_FragColor = vec4(mix(ground, line, edge), 1.0);
}
`
