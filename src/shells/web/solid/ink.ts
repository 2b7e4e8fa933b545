import {
  BufferAttribute,
  BufferGeometry,
  Color,
  DepthTexture,
  DoubleSide,
  Group,
  Matrix4,
  Mesh,
  NearestFilter,
  NoBlending,
  OrthographicCamera,
  Plane,
  PlaneGeometry,
  Scene,
  ShaderMaterial,
  Vector2,
  Vector3,
  WebGLRenderer,
  WebGLRenderTarget,
} from 'three'
import type { SolidShape } from '../workers/solids.ts'
import { screenFragment, screenVertex, surfaceFragment, surfaceVertex } from './shaders.ts'

/** From where the solid is seen, and how. */
export interface Sight {
  readonly bearing_deg: number
  readonly tilt_deg: number
  readonly cut: boolean
  readonly zoom: number
}

export interface InkColours {
  readonly ink: string
  readonly accent: string
  readonly paper: string
  readonly solid: string
}

/** Lines of ink on paper, drawn only when asked. */
export interface Ink {
  readonly take: (shapes: readonly SolidShape[]) => void
  readonly draw: (
    sight: Sight,
    size: readonly [width: number, height: number],
    colours: InkColours,
    chosen: string,
  ) => void
  readonly end: () => void
}

const OUTSIDE = 0.7
const CHOSEN = 1

const surface = (plane: Plane): ShaderMaterial =>
  new ShaderMaterial({
    vertexShader: surfaceVertex,
    fragmentShader: surfaceFragment,
    uniforms: { kind: { value: OUTSIDE } },
    side: DoubleSide,
    blending: NoBlending,
    clipping: true,
    clippingPlanes: [plane],
  })

function groupOf(shapes: readonly SolidShape[], plane: Plane): Group {
  const group = new Group()
  for (const s of shapes) {
    const geometry = new BufferGeometry()
    geometry.setAttribute('position', new BufferAttribute(s.positions, 3))
    geometry.setIndex(new BufferAttribute(s.indices, 1))
    geometry.computeVertexNormals()
    const material = surface(plane)
    for (const { turn_rad, rise_m } of s.places) {
      const mesh = new Mesh(geometry, material)
      mesh.name = s.name
      mesh.applyMatrix4(new Matrix4().makeRotationZ(turn_rad))
      mesh.position.z = rise_m
      group.add(mesh)
    }
  }
  return group
}

function freed(group: Group): void {
  for (const mesh of group.children as Mesh<BufferGeometry, ShaderMaterial>[]) {
    mesh.geometry.dispose()
    mesh.material.dispose()
  }
}

/** Middle and half sizes of all that stands in the group. */
function extent(shapes: readonly SolidShape[]) {
  let [low, high, reach] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0]
  for (const s of shapes)
    for (let i = 0; i < s.positions.length; i += 3) {
      reach = Math.max(reach, Math.hypot(s.positions[i]!, s.positions[i + 1]!))
      for (const p of s.places.length > 0 ? [s.places[0]!, s.places.at(-1)!] : []) {
        low = Math.min(low, s.positions[i + 2]! + p.rise_m)
        high = Math.max(high, s.positions[i + 2]! + p.rise_m)
      }
    }
  return { middle: (low + high) / 2, half: (high - low) / 2, reach }
}

/** Draws into a canvas; throws where the browser has no WebGL. */
export function ink(canvas: HTMLCanvasElement): Ink {
  const renderer = new WebGLRenderer({ canvas, antialias: false })
  renderer.localClippingEnabled = true
  const plane = new Plane(new Vector3(0, 1, 0), 10)
  const target = new WebGLRenderTarget(4, 4, { minFilter: NearestFilter, magFilter: NearestFilter })
  target.depthTexture = new DepthTexture(4, 4)
  const scene = new Scene()
  const paper = new ShaderMaterial({
    vertexShader: screenVertex,
    fragmentShader: screenFragment,
    uniforms: {
      surface: { value: target.texture },
      deep: { value: target.depthTexture },
      pixel: { value: new Vector2() },
      range: { value: 1 },
      ink: { value: new Color() },
      accent: { value: new Color() },
      paper: { value: new Color() },
      solid: { value: new Color() },
    },
    depthTest: false,
    blending: NoBlending,
  })
  const screen = new Scene()
  screen.add(new Mesh(new PlaneGeometry(2, 2), paper))
  const flat = new OrthographicCamera(-1, 1, 1, -1, 0, 1)
  const camera = new OrthographicCamera()
  let group = new Group()
  let size = { middle: 0, half: 1, reach: 0.2 }
  return {
    take: (shapes) => {
      scene.remove(group)
      freed(group)
      group = groupOf(shapes, plane)
      size = extent(shapes)
      scene.add(group)
    },
    draw: (sight, [width, height], colours, chosen) => {
      // Lines are drawn at twice the size and shown at half, so that they are smooth.
      const fine = 2 * Math.min(2, devicePixelRatio)
      renderer.setSize(width * fine, height * fine, false)
      target.setSize(width * fine, height * fine)
      looking(camera, sight, size, width / height)
      const away = (sight.bearing_deg * Math.PI) / 180
      plane.normal.set(-Math.cos(away), -Math.sin(away), 0)
      plane.constant = sight.cut ? 0 : 10
      for (const mesh of group.children as Mesh<BufferGeometry, ShaderMaterial>[])
        mesh.material.uniforms['kind']!.value = mesh.name === chosen ? CHOSEN : OUTSIDE
      const u = paper.uniforms
      // A line is one pixel of the screen wide on either side of where it runs.
      ;(u['pixel']!.value as Vector2).set(1 / (width * fine), 1 / (height * fine)).multiplyScalar(fine / 2)
      u['range']!.value = camera.far - camera.near
      for (const name of ['ink', 'accent', 'paper', 'solid'] as const)
        (u[name]!.value as Color).setStyle(colours[name], '')
      renderer.setRenderTarget(target)
      renderer.setClearColor(0x000000, 0)
      renderer.clear()
      renderer.render(scene, camera)
      renderer.setRenderTarget(null)
      renderer.clear()
      renderer.render(screen, flat)
    },
    end: () => {
      freed(group)
      target.dispose()
      paper.dispose()
      renderer.dispose()
    },
  }
}

/** The tower fills the height; nearer, its upper part does. */
function looking(
  camera: OrthographicCamera,
  { bearing_deg, tilt_deg, zoom }: Sight,
  { middle, half, reach }: { readonly middle: number; readonly half: number; readonly reach: number },
  aspect: number,
): void {
  const [b, t] = [(bearing_deg * Math.PI) / 180, (tilt_deg * Math.PI) / 180]
  const tall = (half * Math.cos(t) + reach * Math.abs(Math.sin(t))) * 1.04
  const high = Math.max(tall, (reach * 1.06) / aspect) / zoom
  camera.left = -high * aspect
  camera.right = high * aspect
  camera.top = high
  camera.bottom = -high
  const far = 2 * (half + reach) + 1
  camera.near = 0
  camera.far = 2 * far
  // Zoomed in, what is looked at slides to the top, where water is spread.
  const aim = middle + half * (1 - 1 / zoom)
  camera.up.set(0, 0, 1)
  camera.position.set(far * Math.cos(b) * Math.cos(t), far * Math.sin(b) * Math.cos(t), aim + far * Math.sin(t))
  camera.lookAt(0, 0, aim)
  camera.updateProjectionMatrix()
}
