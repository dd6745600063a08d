// Adds one sample to those gathered.
uniform sampler2D sample_light;
out vec4 result;

void main() {
  result = texelFetch(sample_light, ivec2(gl_FragCoord.xy), 0);
}
