// Bricks, blocks and mortar, from the units that are laid.
#include <cstdio>
#include <map>

#include "model/level_text.h"
#include "model/takeoff/items.h"
#include "model/takeoff/laid_count.h"
#include "model/takeoff/unit_rates.h"

namespace model {
namespace {

// Sand is booked by half cubic metres: common practice, no source.
constexpr double kSandStep = 0.5;

struct UnitKind {
  std::string name;               // "Facing bricks"
  std::string mortar;             // "Mortar for brickwork"
  double length = 0, height = 0;  // metres
  double waste = 0;
  bool brick = false;
};

UnitKind kindOf(const Element& leaf, const Job& job) {
  const WallBuildUp& walls = job.walls;
  if (leaf.material == Material::Brick) {
    const bool facing = leaf.kind == ElementKind::OuterLeaf;
    return {facing ? "Facing bricks" : "Bricks, garden walls",
            "Mortar for brickwork",
            walls.brickLength,
            walls.brickHeight,
            waste::kBricks,
            true};
  }
  return {blocksName(leaf, job), "Mortar for blockwork", walls.blockLength,
          walls.blockHeight,     waste::kBlocks,         false};
}

std::string mixText(double sand) {
  char text[32];
  std::snprintf(text, sizeof text, "1 : %g", sand);
  return text;
}

class Units {
 public:
  Units(const TakeoffInput& in, Tally& tally) : in_(in), tally_(tally) {}

  void count() {
    for (const Element& e : in_.works.elements) {
      if (e.unitCount == 0) continue;
      UnitKind kind = kindOf(e, in_.job);
      Group& group = groups_[kind.name];
      group.byStage[e.placed.stage].add(in_.works, e);
      group.kind = std::move(kind);
    }
    // Bricks before blocks, then what they are laid in.
    for (const bool brick : {true, false}) {
      for (const auto& [name, group] : groups_)
        if (group.kind.brick == brick) tellUnits(group);
    }
    for (const bool brick : {true, false}) {
      for (const auto& [name, group] : groups_)
        if (group.kind.brick == brick) tellMortar(group);
    }
    for (const auto& [name, group] : groups_) tellParts(group);
  }

 private:
  struct Group {
    UnitKind kind;
    std::map<StageKey, LaidCount> byStage;
  };

  // How the net number comes about, so that it is not held for the number laid.
  void tellUnits(const Group& group) {
    const UnitKind& kind = group.kind;
    const TakeoffItem order{kind.name, Unit::Each, kind.waste, 1,
                            "laid whole, and those that pieces are cut from, a saw cut of " +
                                lengthText(kSawCut) + " lost each time"};
    const auto pieces = [&](const char* what) {
      return TakeoffItem{kind.name + ", " + what, Unit::Each, 0, 0, "of them, as laid"};
    };
    std::map<StageKey, UnitsNeeded> needed;
    for (const auto& [stage, laid] : group.byStage) {
      needed[stage] = neededFor(laid, kind.length, kind.height);
      tally_.add(order, needed[stage].wholes, stage);
    }
    const auto tell = [&](const TakeoffItem& item, int LaidCount::*number) {
      for (const auto& [stage, laid] : group.byStage) tally_.add(item, laid.*number, stage);
    };
    tell(pieces("laid whole"), &LaidCount::whole);
    tell(pieces("halves"), &LaidCount::half);
    tell(pieces("three-quarters"), &LaidCount::threeQuarter);
    tell(pieces("closers"), &LaidCount::closer);
    tell(pieces("cut to other lengths"), &LaidCount::cut);
    tell(pieces("cut in height"), &LaidCount::split);
    tell(pieces("cut to the rake"), &LaidCount::raked);
    const TakeoffItem lost{kind.name + ", lost in cutting", Unit::Each, 0, 0,
                           "in whole units: saw cuts, and ends that nothing is cut from"};
    for (const auto& [stage, of] : needed) tally_.add(lost, of.lost, stage);
    tell({kind.brick ? "Angle bricks, special" : kind.name + ", corner specials", Unit::Each,
          kind.waste, 1, "made for corners that are not square"},
         &LaidCount::special);
  }

  void tellMortar(const Group& group) {
    const TakeoffItem mortar{group.kind.mortar + ", " + mixText(in_.job.laying.mixSand),
                             Unit::CubicMetre, 0, 0,
                             "leaves less their units: beds and cross joints, no frogs"};
    for (const auto& [stage, laid] : group.byStage) tally_.add(mortar, laid.mortar(), stage);
  }

  // What the mortar is mixed of. By volume, dry.
  void tellParts(const Group& group) {
    const double sand = in_.job.laying.mixSand;
    const double cement = kDryToMortar / (1 + sand);
    const TakeoffItem bags{"Cement for mortar, bags of 25 kg", Unit::Each, waste::kMortar, 1,
                           "mix of " + mixText(sand) + "; 38 dry parts make 27 of mortar"};
    const TakeoffItem loose{
        "Sand for mortar, loose and dry", Unit::CubicMetre, waste::kMortar, kSandStep,
        "mix of " + mixText(sand) + "; 38 dry parts make 27 of mortar; damp sand bulks, so more"};
    for (const auto& [stage, laid] : group.byStage) {
      tally_.add(bags, laid.mortar() * cement * kCementWeight / kCementBag, stage);
      tally_.add(loose, laid.mortar() * cement * sand, stage);
    }
  }

  const TakeoffInput& in_;
  Tally& tally_;
  std::map<std::string, Group> groups_;
};

}  // namespace

void countUnits(const TakeoffInput& in, Tally& tally) { Units(in, tally).count(); }

}  // namespace model
