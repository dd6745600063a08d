// One triangle over the whole picture, at its farthest depth.
out vec2 spot;  // -1..1

void main() {
  spot = vec2(gl_VertexID == 1 ? 3.0 : -1.0, gl_VertexID == 2 ? 3.0 : -1.0);
  gl_Position = vec4(spot, 1.0, 1.0);
}
