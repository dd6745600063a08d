// The mean of all samples, as bytes.
uniform sampler2D gathered;
out vec4 result;

void main() {
  vec4 sum = texelFetch(gathered, ivec2(gl_FragCoord.xy), 0);
  result = developed(sum.rgb / max(sum.a, 1.0), gl_FragCoord.xy);
}
