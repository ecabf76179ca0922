#include "viewer/palette.h"

#include <cmath>

namespace viewer {

namespace {

float linearOf(unsigned byte) {
  const float c = static_cast<float>(byte) / 255.0f;
  return c <= 0.04045f ? c / 12.92f : std::pow((c + 0.055f) / 1.055f, 2.4f);
}

Look plain(unsigned wash, Hatch hatch, float grain = 0, float variation = 0) {
  Look look;
  look.wash = look.joint = linear(wash);
  look.period = glm::vec2(grain);
  look.variation = variation;
  look.hatch = hatch;
  return look;
}

Look bonded(unsigned wash, unsigned joint, float length, float height, float width, Hatch hatch) {
  Look look;
  look.wash = linear(wash);
  look.joint = linear(joint);
  look.period = glm::vec2(length + width, height + width);
  look.jointWidth = width;
  look.stagger = 0.5f;
  look.variation = 0.16f;
  look.coursed = true;
  look.hatch = hatch;
  return look;
}

Look timber(unsigned wash) {
  Look look = plain(wash, Hatch::Grain, 0, 0.10f);
  look.period = {0.9f, 0.017f};
  look.stagger = 0.37f;
  return look;
}

// Plain tiles at a 100 mm gauge, 165 wide: common practice, no source.
Look tile() {
  Look look = bonded(0x9a5746, 0x5e342b, 0.163f, 0.092f, 0.008f, Hatch::Dense);
  look.coursed = false;
  look.variation = 0.14f;
  return look;
}

}  // namespace

glm::vec3 linear(unsigned srgb) {
  return {linearOf(srgb >> 16 & 255), linearOf(srgb >> 8 & 255), linearOf(srgb & 255)};
}

glm::vec3 encoded(unsigned srgb) {
  return glm::vec3(srgb >> 16 & 255, srgb >> 8 & 255, srgb & 255) / 255.0f;
}

Look grassLook() { return plain(0xd3dcb8, Hatch::Earth, 0.11f, 0.07f); }

Look lookOf(model::Material material, const Coursing& c) {
  using enum model::Material;
  switch (material) {
    case Earth:
      return plain(0xd9c6a3, Hatch::Earth, 0.14f, 0.06f);
    case Topsoil:
      return plain(0xa88f6d, Hatch::Earth, 0.12f, 0.08f);
    case Hardcore:
      return plain(0xbfb3a2, Hatch::Stones, 0.06f, 0.28f);
    case Concrete:
      return plain(0xcfccc4, Hatch::Speckle, 0.035f, 0.05f);
    case LeanConcrete:
      return plain(0xc2bcae, Hatch::Speckle, 0.035f, 0.06f);
    case Brick:
      return bonded(0xbb6c50, 0xdccfbb, c.brickLength, c.brickHeight, c.joint, Hatch::Diagonal);
    case Block: {
      Look look = bonded(0xcdcbc5, 0x98948b, c.blockLength, c.blockHeight, c.joint, Hatch::Wide);
      look.variation = 0.06f;
      return look;
    }
    case Insulation:
      return plain(0xf0dc93, Hatch::Loops, 0.05f, 0.04f);
    case Screed:
      return plain(0xdcd8cd, Hatch::Speckle, 0.02f, 0.03f);
    case Membrane:
      return plain(0x4a5660, Hatch::Solid);
    case Timber:
      return timber(0xe0c094);
    case Plywood:
      return timber(0xd2ab74);
    case Steel:
      return plain(0x7d868e, Hatch::Dense);
    case Tile:
      return tile();
    case Glass:
      return plain(0xb9d3da, Hatch::Solid);
    case Render:
      return plain(0xece5d6, Hatch::Speckle, 0.02f, 0.03f);
    case Clay:
      return plain(0xb06246, Hatch::Diagonal, 0.05f, 0.05f);
    case Masonry: {
      Look look =
          bonded(0xdad4c8, 0xcac3b5, c.brickLength, c.brickHeight, c.joint, Hatch::Diagonal);
      look.variation = 0.03f;
      return look;
    }
  }
  return {};
}

}  // namespace viewer
