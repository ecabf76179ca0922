#include "viewer/unit_words.h"

#include <cmath>

#include "viewer/draw_list.h"

namespace viewer {

namespace {

std::string millimetres(double metres) { return std::to_string(std::lround(metres * 1000)); }

// The element's name without the part of it: "Wall A-B, outer leaf".
std::string leafName(const model::Element& element) {
  const size_t first = element.name.find(", ");
  const size_t second = first == std::string::npos ? first : element.name.find(", ", first + 2);
  return element.name.substr(0, second);
}

}  // namespace

std::string unitName(const model::MasonryUnit& unit, bool block) {
  using enum model::Piece;
  const std::string kind = block ? "block" : "brick";
  switch (unit.piece) {
    case Whole:
      return (unit.header ? "header, whole " : "whole ") + kind;
    case Half:
      return "half " + kind + " " + millimetres(unit.length());
    case ThreeQuarter:
      return "three-quarter " + kind + " " + millimetres(unit.length());
    case Closer:
      return "closer " + millimetres(unit.length());
    case Cut:
      return "cut " + kind + " " + millimetres(unit.length());
    case Split:
      return "split " + kind + " " + millimetres(unit.height()) + " high";
    case Raked:
      return kind + " cut to the rake, " + millimetres(unit.length());
    case Special:
      return block ? "special block" : "angle brick";
  }
  return kind;
}

std::string unitWords(const model::Model& model, std::uint32_t element, size_t unit) {
  const model::Element& of = model.works.elements[element];
  const model::MasonryUnit& it = model.works.units[unit];
  const bool block = of.material == model::Material::Block;
  const std::string course =
      it.course >= 0 ? "course " + std::to_string(it.course + 1)
                     : "course " + std::to_string(-it.course) + " below the damp course";
  return leafName(of) + ", " + course + ", " + unitName(it, block);
}

PieceCounts piecesStanding(const model::Model& model, const Scene& scene, double time) {
  PieceCounts counts;
  for (const std::uint32_t i : scene.order) {
    const ElementRange& range = scene.elements[i];
    if (range.placed.from > time) break;
    if (range.unitCount == 0 || !standsAt(range, time)) continue;
    const bool block = model.works.elements[i].material == model::Material::Block;
    auto& by = block ? counts.blocks : counts.bricks;
    for (std::uint32_t u = range.firstUnit; u < range.firstUnit + range.unitCount; ++u) {
      if (static_cast<double>(scene.units[u].appears) > time) break;
      ++by[scene.units[u].what >> kPieceShift & 7u];
    }
  }
  return counts;
}

}  // namespace viewer
