#include "model/exchange/glb_materials.h"

#include <cmath>
#include <cstdint>

namespace model {

namespace {

// From the way colours are written for screens (sRGB) to linear light. Source: [IEC61966-2-1]
double linear(std::uint32_t byte) {
  const double c = double(byte) / 255;
  return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

GlbColour screen(std::uint32_t rgb, double cover = 1) {
  return {{linear(rgb >> 16 & 0xff), linear(rgb >> 8 & 0xff), linear(rgb & 0xff), cover}};
}

}  // namespace

GlbColour colourOf(Material material) {
  switch (material) {
    case Material::Earth:
      return screen(0x9c7f5c);
    case Material::Topsoil:
      return screen(0x7d8a55);
    case Material::Hardcore:
      return screen(0x9a958c);
    case Material::Concrete:
      return screen(0xb9b7b0);
    case Material::LeanConcrete:
      return screen(0xcac6ba);
    case Material::Brick:
      return screen(0xb0644a);
    case Material::Block:
      return screen(0xa3a5a4);
    case Material::Insulation:
      return screen(0xe3cf8e);
    case Material::Screed:
      return screen(0xd0cabb);
    case Material::Membrane:
      return screen(0x3c3f45);
    case Material::Timber:
      return screen(0xcfa871);
    case Material::Plywood:
      return screen(0xd6b98a);
    case Material::Steel:
      return screen(0x8c99a3);
    case Material::Tile:
      return screen(0x8a4b3c);
    case Material::Glass:
      return screen(0x9fc4cf, 0.45);
    case Material::Render:
      return screen(0xe6dfd0);
    case Material::Clay:
      return screen(0xa65a41);
    case Material::Masonry:
      return screen(0xc9c1b2);
  }
  return screen(0xc0c0c0);
}

GlbColour stringLineColour() { return screen(0xd55e00); }

GlbColour markerColour(Verdict verdict) {
  switch (verdict) {
    case Verdict::Within:
      return screen(0x2d6fa3);
    case Verdict::AtTheEdge:
      return screen(0xe0a92e);
    case Verdict::Out:
      break;
  }
  return screen(0xc63d1f);
}

}  // namespace model
