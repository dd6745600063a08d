#include <cmath>

#include "sim/scene/hands/hand_flesh.h"
#include "sim/scene/hands/hand_shape.h"
#include "tests/support/catch.h"

namespace proofstand::testing {
namespace {

using namespace scene;

ShapedHand shaped(int shape) { return shape_hand(static_cast<HandShape>(shape)); }

// how far a point lies from the axis of what a hand holds
float off_axis_m(const ShapedHand& hand, const glm::vec3& point) {
  const glm::vec3 at(hand.hold[3]);
  const glm::vec3 axis(hand.hold[2]);
  const glm::vec3 to = point - at;
  return glm::length(to - glm::dot(to, axis) * axis);
}

}  // namespace

// danger: a hand with fingers of a doll
// source: bones of the index finger 0.245, 0.143 and 0.097 of the hand's length (Ergonomics 35(3) 1992, from memory):
// 88.8 mm for 183 mm, the pad's flesh adds a little
TEST_CASE("fingers are as long as published") {
  CHECK(finger_length_m(Finger::Index) == Approx(0.0888).margin(0.002));
  CHECK(finger_length_m(Finger::Middle) > finger_length_m(Finger::Index));
  CHECK(finger_length_m(Finger::Little) < finger_length_m(Finger::Ring));
}

// source: breadth 86 mm men, 77 mm women (Asian J. Medical Sciences 3(8) 2011), thumb not counted
TEST_CASE("the palm is as broad as published") {
  const ShapedHand hand = shape_hand(HandShape::Flat);
  const DistanceField field = flesh(hand.chains);
  float least = 1.0F;
  float most = -1.0F;
  for (float z = -0.07F; z < 0.07F; z += 0.0005F) {
    if (field({0.080F, -0.002F, z}) > 0.0F) continue;
    least = std::min(least, z);
    most = std::max(most, z);
  }
  CHECK(most - least > 0.074F);
  CHECK(most - least < 0.090F);
}

// danger: holes and folds in the skin, a hand turned inside out
TEST_CASE("the skin of every shape is closed and holds a hand's volume") {
  for (int i = 0; i < kHandShapes; ++i) {
    const Mesh skin = skin_mesh(shaped(i).chains, 0.0052F);
    CAPTURE(i);
    CHECK(is_closed(skin));
    // hand and wrist displace about 0.35 to 0.6 litres: from memory
    CHECK(volume_m3(skin) > 0.00030);
    CHECK(volume_m3(skin) < 0.00065);
    CHECK(skin.indices.size() / 3 < 9000);
  }
}

// danger: fingers that float beside what they hold, or reach through it
TEST_CASE("pads of thumb and fingers lie on what a hand pinches") {
  for (const HandShape shape :
       {HandShape::Pinch, HandShape::PinchMid, HandShape::PinchWide, HandShape::Aside, HandShape::AsideMid}) {
    const ShapedHand hand = shape_hand(shape);
    const float radius = 0.5F * held_diameter_m(shape);
    CAPTURE(static_cast<int>(shape));
    CHECK(off_axis_m(hand, hand.chains[0].pad()) == Approx(radius).margin(0.0025));
    CHECK(off_axis_m(hand, hand.chains[1].pad()) == Approx(radius).margin(0.0065));
    // thumb and fore finger face each other
    const glm::vec3 at(hand.hold[3]);
    CHECK(glm::dot(hand.chains[0].pad() - at, hand.chains[1].pad() - at) < 0.0F);
  }
}

TEST_CASE("a fist closes round its handle without biting into it") {
  for (const HandShape shape : {HandShape::Fist, HandShape::FistWide, HandShape::Grasp}) {
    const ShapedHand hand = shape_hand(shape);
    const float radius = 0.5F * held_diameter_m(shape);
    CAPTURE(static_cast<int>(shape));
    for (int finger = 1; finger < kFingers; ++finger) {
      const FingerChain& chain = hand.chains[static_cast<std::size_t>(finger)];
      for (std::size_t j = 1; j < 4; ++j) {
        CHECK(off_axis_m(hand, chain.joints[j]) > radius + 0.5F * chain.radius_m[j]);
      }
      // round the far side: the tip has come back towards the palm
      CHECK(chain.joints[3].x < chain.joints[1].x);
    }
  }
}

TEST_CASE("where a hand holds is a frame") {
  for (int i = 0; i < kHandShapes; ++i) {
    const glm::mat4 hold = shaped(i).hold;
    CHECK(glm::determinant(glm::mat3(hold)) == Approx(1.0F).margin(1e-4));
    CHECK(std::isfinite(glm::length(glm::vec3(hold[3]))));
  }
}

}  // namespace proofstand::testing
