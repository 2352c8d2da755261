import { rampPixels } from './stretch-scale.ts';

/** Draws the field of stretch on a canvas; false from `of` where the device has no WebGL 2. */
export interface FieldPainter {
  /** `points` on the mat, mm; `overWet` per node, of which `most` is the last colour; `view`: what the canvas shows, mm. */
  readonly paint: (field: PaintedField) => void;
  readonly drop: () => void;
}

export interface PaintedField {
  readonly points: Float32Array;
  readonly triangles: Uint32Array;
  readonly overWet: Float32Array;
  /** The stretch that has the last colour of the scale. */
  readonly most: number;
  readonly view: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  };
}

const VERTEX = `#version 300 es
uniform vec4 view; uniform float most; in vec2 place; in float over; out float share;
void main() {
  vec2 at = (place - view.xy) / view.zw;
  gl_Position = vec4(2.0 * at.x - 1.0, 1.0 - 2.0 * at.y, 0.0, 1.0);
  share = over / most;
}`;
const FRAGMENT = `#version 300 es
precision highp float;
uniform sampler2D ramp; in float share; out vec4 colour;
void main() { colour = texture(ramp, vec2(clamp(share, 0.0, 1.0) * 255.0 / 256.0 + 0.5 / 256.0, 0.5)); }`;

const compiled = (gl: WebGL2RenderingContext): WebGLProgram | null => {
  const program = gl.createProgram();
  for (const [kind, source] of [
    [gl.VERTEX_SHADER, VERTEX],
    [gl.FRAGMENT_SHADER, FRAGMENT],
  ] as const) {
    const shader = gl.createShader(kind);
    if (shader === null) return null;
    gl.shaderSource(shader, source);
    gl.compileShader(shader);
    gl.attachShader(program, shader);
  }
  gl.linkProgram(program);
  return gl.getProgramParameter(program, gl.LINK_STATUS) ? program : null;
};

/** Null where the device draws no WebGL 2, or has lost it. */
export const fieldPainter = (canvas: HTMLCanvasElement): FieldPainter | null => {
  // The edge needs no smoothing: the outline is drawn over it. Kept, so that a page on paper has it.
  const gl = canvas.getContext('webgl2', { antialias: false, preserveDrawingBuffer: true });
  const program = gl && compiled(gl);
  if (!gl || !program) return null;
  // biome-ignore lint/correctness/useHookAtTopLevel: a method of WebGL, no hook
  gl.useProgram(program);
  const buffers = [gl.createBuffer(), gl.createBuffer(), gl.createBuffer()] as const;
  gl.bindTexture(gl.TEXTURE_2D, gl.createTexture());
  gl.texImage2D(gl.TEXTURE_2D, 0, gl.RGBA, 256, 1, 0, gl.RGBA, gl.UNSIGNED_BYTE, rampPixels());
  gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_MIN_FILTER, gl.LINEAR);
  gl.texParameteri(gl.TEXTURE_2D, gl.TEXTURE_WRAP_S, gl.CLAMP_TO_EDGE);
  const feed = (name: string, size: number, buffer: WebGLBuffer, data: Float32Array): void => {
    const at = gl.getAttribLocation(program, name);
    gl.bindBuffer(gl.ARRAY_BUFFER, buffer);
    gl.bufferData(gl.ARRAY_BUFFER, data, gl.DYNAMIC_DRAW);
    gl.enableVertexAttribArray(at);
    gl.vertexAttribPointer(at, size, gl.FLOAT, false, 0, 0);
  };
  return {
    paint: ({ points, triangles, overWet, most, view }) => {
      gl.viewport(0, 0, canvas.width, canvas.height);
      gl.clearColor(0, 0, 0, 0);
      gl.clear(gl.COLOR_BUFFER_BIT);
      feed('place', 2, buffers[0], points);
      feed('over', 1, buffers[1], overWet);
      gl.bindBuffer(gl.ELEMENT_ARRAY_BUFFER, buffers[2]);
      gl.bufferData(gl.ELEMENT_ARRAY_BUFFER, triangles, gl.DYNAMIC_DRAW);
      gl.uniform4f(gl.getUniformLocation(program, 'view'), view.x, view.y, view.width, view.height);
      gl.uniform1f(gl.getUniformLocation(program, 'most'), most);
      gl.drawElements(gl.TRIANGLES, triangles.length, gl.UNSIGNED_INT, 0);
    },
    drop: () => gl.getExtension('WEBGL_lose_context')?.loseContext(),
  };
};
