#include <cstdio>

#include "model/level_text.h"
#include "model/takeoff/items.h"
#include "model/takeoff/laid_count.h"
#include "model/takeoff/unit_rates.h"
#include "model/works/ground_parts.h"

namespace model {
namespace {

// Common practice, no source: lorries of loose spoil are booked by whole cubic metres, stone by
// halves, ready-mixed concrete by quarters.
constexpr double kLooseStep = 1.0;
constexpr double kStoneStep = 0.5;
constexpr double kConcreteStep = 0.25;

// The inside is reduced in the same stage as the trenches are dug, but is a dig of its own.
std::string digName(const Element& e) {
  switch (e.removed->stage.kind) {
    case StageKind::CellarDig:
      return "Dig, cellar";
    case StageKind::TrenchDig:
      return e.id == kReducedLevelId ? "Dig, reduced level inside" : "Dig, foundation trenches";
    case StageKind::GardenFoundations:
      return "Dig, garden walls";
    default:
      return "Dig, reduced level";
  }
}

std::string bulkedBasis(double bulking) {
  char text[96];
  std::snprintf(text, sizeof text, "volume in the bank x %.2f", bulking);
  return text;
}

// Soil that fills a hole again, as against stone.
bool isReusedSoil(const Element& e) {
  return e.kind == ElementKind::Backfill && e.material == Material::Earth;
}

// Spoil dug less spoil put back, bulked, shared among the stages that dig.
void countMuckAway(const TakeoffInput& in, Tally& tally) {
  double dug = 0, back = 0;
  for (const Element& e : in.works.elements) {
    if (e.kind == ElementKind::Spoil && e.removed) dug += volume(e.solid);
    if (isReusedSoil(e)) back += volume(e.solid);
  }
  if (dug <= back) return;
  const double share = (dug - back) / dug * in.job.ground.bulking;
  const TakeoffItem away{"Muck away, loose", Unit::CubicMetre, 0, kLooseStep,
                         "dig less backfill; " + bulkedBasis(in.job.ground.bulking)};
  for (const Element& e : in.works.elements) {
    if (e.kind != ElementKind::Spoil || !e.removed) continue;
    tally.add(away, share * volume(e.solid), e.removed->stage);
  }
}

// Topsoil stripped less topsoil put back, bulked, shared among the stages that strip.
void countSurplusTopsoil(const TakeoffInput& in, Tally& tally) {
  const auto stripped = [](const Element& e) {
    return e.kind == ElementKind::Topsoil && e.removed.has_value();
  };
  double off = 0, back = 0;
  for (const Element& e : in.works.elements) {
    if (stripped(e)) off += volume(e.solid);
    const bool putBack =
        e.kind == ElementKind::Topsoil && e.placed.stage.kind != StageKind::Existing;
    if (putBack) back += volume(e.solid);
  }
  if (off <= back) return;
  const double share = (off - back) / off * in.job.ground.bulking;
  const TakeoffItem away{"Muck away, topsoil, loose", Unit::CubicMetre, 0, kLooseStep,
                         "strip less put back; " + bulkedBasis(in.job.ground.bulking)};
  for (const Element& e : in.works.elements)
    if (stripped(e)) tally.add(away, share * volume(e.solid), e.removed->stage);
}

// What the cores of hollow blocks are filled with, from the units: their share of each, cut ones
// too.
void countCores(const TakeoffInput& in, Tally& tally) {
  if (!in.job.cellar || in.job.cellar->kind != CellarWallKind::HollowBlock) return;
  char basis[64];
  std::snprintf(basis, sizeof basis, "%g %% of the blocks as laid", in.job.cellar->cores * 100);
  for (const Element& e : in.works.elements) {
    if (e.kind != ElementKind::CellarWall) continue;
    LaidCount laid;
    laid.add(in.works, e);
    tally.add({"Concrete, cores of cellar wall blocks", Unit::CubicMetre, waste::kConcrete,
               kConcreteStep, basis},
              laid.units * in.job.cellar->cores, e.placed.stage);
  }
}

}  // namespace

void countGroundworks(const TakeoffInput& in, Tally& tally) {
  const TakeoffItem loose{"Spoil, loose in the heap", Unit::CubicMetre, 0, 0,
                          bulkedBasis(in.job.ground.bulking)};
  for (const Element& e : in.works.elements) {
    if (e.kind == ElementKind::Topsoil && e.removed) {
      tally.add({"Topsoil to strip", Unit::CubicMetre, 0, 0,
                 lengthText(in.job.ground.topsoil) + " deep, in the bank"},
                volume(e.solid), e.removed->stage);
    } else if (e.kind == ElementKind::Spoil && e.removed) {
      tally.add({digName(e), Unit::CubicMetre, 0, 0, "in the bank"}, volume(e.solid),
                e.removed->stage);
    }
  }
  for (const Element& e : in.works.elements) {
    if (e.kind == ElementKind::Spoil && e.removed) {
      tally.add(loose, volume(e.solid) * in.job.ground.bulking, e.removed->stage);
    }
  }
  for (const Element& e : in.works.elements) {
    if (isReusedSoil(e)) {
      tally.add({"Backfill from the dig", Unit::CubicMetre, 0, 0, "compacted, as drawn"},
                volume(e.solid), e.placed.stage);
    } else if (e.kind == ElementKind::Topsoil && e.placed.stage.kind != StageKind::Existing) {
      tally.add({"Topsoil put back", Unit::CubicMetre, 0, 0, "from the heap"}, volume(e.solid),
                e.placed.stage);
    }
  }
  countMuckAway(in, tally);
  countSurplusTopsoil(in, tally);
  for (const Element& e : in.works.elements) {
    const bool stone =
        e.kind == ElementKind::Hardcore || (e.kind == ElementKind::Backfill && !isReusedSoil(e));
    if (!stone) continue;
    tally.add({"Hardcore", Unit::CubicMetre, waste::kHardcore, kStoneStep, "compacted, as drawn"},
              volume(e.solid), e.placed.stage);
  }
}

void countConcrete(const TakeoffInput& in, Tally& tally) {
  const auto count = [&](ElementKind kind, const char* item) {
    for (const Element& e : in.works.elements) {
      // Cellar walls of blocks are blockwork.
      if (e.kind != kind || e.unitCount > 0) continue;
      tally.add({item, Unit::CubicMetre, waste::kConcrete, kConcreteStep, "as drawn, net"},
                volume(e.solid), e.placed.stage);
    }
  };
  count(ElementKind::Blinding, "Lean concrete, blinding and mass fill");
  count(ElementKind::CellarSlab, "Concrete, cellar slab");
  count(ElementKind::CellarWall, "Concrete, cellar walls");
  count(ElementKind::Core, "Concrete, cellar walls, between their leaves");
  countCores(in, tally);
  count(ElementKind::Foundation, "Concrete, foundations");
  count(ElementKind::CavityFill, "Lean concrete, cavity fill");
  count(ElementKind::GroundSlab, "Concrete, ground slab");
  if (!in.job.cellar || in.job.cellar->membrane <= 0) return;
  for (const Element& e : in.works.elements) {
    if (e.kind != ElementKind::CellarMembrane) continue;
    tally.add({"Waterproofing, cellar walls", Unit::SquareMetre, waste::kMembrane, 1,
               "wall face; laps in the allowance"},
              volume(e.solid) / in.job.cellar->membrane, e.placed.stage);
  }
}

}  // namespace model
