in vec3 at;
in vec3 facing;
uniform float number;  // 1 + place

layout(location = 0) out vec4 place_and_point;
layout(location = 1) out vec4 way;

void main() {
  place_and_point = vec4(at, number);
  way = vec4(normalize(facing), 0.0);
}
