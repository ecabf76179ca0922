// What is built in as the leaves rise: ties, insulation, closers, damp courses, trays.
#include <algorithm>
#include <cmath>
#include <map>
#include <tuple>

#include "model/level_text.h"
#include "model/takeoff/items.h"
#include "model/takeoff/measure.h"
#include "model/takeoff/sheets.h"
#include "model/takeoff/unit_rates.h"
#include "model/works/cavity_parts.h"
#include "model/works/starter_strips.h"

namespace model {
namespace {

void countTies(const TakeoffInput& in, Tally& tally) {
  const WallBuildUp& w = in.job.walls;
  const BuiltIn& built = w.builtIn;
  const TakeoffItem ties{
      "Wall ties, " + lengthText(tieLength(in.job)) + " long", Unit::Each, waste::kTies, 1,
      "for a cavity of " + lengthText(w.cavity) + ": " + lengthText(built.tieAcross) +
          " across and " + lengthText(built.tieUp) +
          " up, staggered; beside openings, verges "
          "and movement joints " +
          lengthText(built.tieUpBeside) + " up; at least 50 in each leaf"};
  const TakeoffItem discs{"Retaining discs on ties", Unit::Each, waste::kTies, 1,
                          "one a tie, to hold the boards against the inner leaf"};
  const bool partFilled = w.insulation > 0 && w.insulation < w.cavity - 1e-6;
  for (const Element& e : in.works.elements) {
    if (e.kind != ElementKind::WallTie) continue;
    tally.add(ties, e.quantity.amount, e.placed.stage);
    const bool held = e.placed.stage.kind != StageKind::WallsBelowDampCourse;
    if (partFilled && held) tally.add(discs, e.quantity.amount, e.placed.stage);
  }
}

// Boards by area, and the sheets that their pieces are cut from, stage by stage.
void countBoards(const TakeoffInput& in, Tally& tally) {
  const WallBuildUp& w = in.job.walls;
  const BuiltIn& built = w.builtIn;
  const TakeoffItem area{"Cavity insulation, " + lengthText(w.insulation), Unit::SquareMetre, 0, 0,
                         "face, openings taken out"};
  std::map<StageKey, std::vector<PieceSize>> pieces;
  for (const Element& e : in.works.elements) {
    if (e.kind != ElementKind::CavityInsulation || w.insulation <= 0) continue;
    tally.add(area, volume(e.solid) / w.insulation, e.placed.stage);
    const auto wall = in.settingOut.wallNamed(e.wall);
    if (!wall) continue;
    const auto sizes = pieceSizes(e.solid, Vec3(in.settingOut.walls[*wall].along, 0));
    auto& all = pieces[e.placed.stage];
    all.insert(all.end(), sizes.begin(), sizes.end());
  }
  const TakeoffItem sheets{"Insulation boards, " + lengthText(built.boardLength) + " x " +
                               lengthText(built.boardHeight) + " x " + lengthText(w.insulation),
                           Unit::Each, waste::kBreakage, 1,
                           "pieces laid out on whole boards, offcuts used again in their stage"};
  for (const auto& [stage, list] : pieces)
    tally.add(sheets, sheetsFor(list, built.boardLength, built.boardHeight), stage);
}

void countDampCourses(const TakeoffInput& in, Tally& tally) {
  for (const Element& e : in.works.elements) {
    const auto wall = in.settingOut.wallNamed(e.wall);
    if (!wall) continue;
    const bool atJambs = e.id.find("/jambs/") != std::string::npos;
    const bool atStep = e.id.find("/damp course/step ") != std::string::npos;
    if (e.kind == ElementKind::DampCourse &&
        (atJambs || atStep || e.placed.stage.kind == StageKind::DampCourse)) {
      const double width = extentAlong(e.solid, Vec3(in.settingOut.walls[*wall].outward, 0));
      const TakeoffItem item =
          atJambs ? TakeoffItem{"Damp course, upright at jambs", Unit::Metre, waste::kMembrane, 1,
                                "between closer and outer leaf"}
                  : TakeoffItem{"Damp course, " + lengthText(width) + " wide", Unit::Metre,
                                waste::kMembrane, 1, "each leaf on its own; laps in the allowance"};
      tally.add(item, e.quantity.amount, e.placed.stage);
    } else if (e.kind == ElementKind::CavityTray) {
      tally.add({"Cavity trays", Unit::Metre, waste::kMembrane, 0.1,
                 "as long as their lintels or steps of the damp course, or along level barriers"},
                e.quantity.amount, e.placed.stage);
      // A shell each, and one for the sheet.
      const auto shells = pieceSizes(e.solid, Vec3(in.settingOut.walls[*wall].along, 0)).size();
      if (shells > 1)
        tally.add({"Stop ends of cavity trays", Unit::Each, 0, 1,
                   "where a tray ends; none where it goes on round a corner"},
                  static_cast<double>(shells - 1), e.placed.stage);
    }
  }
}

void countWeepVents(const TakeoffInput& in, Tally& tally) {
  for (const Element& e : in.works.elements)
    if (e.kind == ElementKind::WeepVent)
      tally.add({"Weep vents", Unit::Each, waste::kBreakage, 1,
                 "two or more over each tray, and along the foot of the cavity, at most " +
                     lengthText(in.job.walls.builtIn.weepSpacing) + " apart"},
                e.quantity.amount, e.placed.stage);
}

// By width, narrowest first.
void countBarriersAndJoints(const TakeoffInput& in, Tally& tally) {
  const auto mm = [](double metres) { return static_cast<int>(std::lround(metres * 1000)); };
  std::map<std::tuple<ElementKind, int>, std::map<StageKey, double>> lengths;
  for (const Element& e : in.works.elements) {
    if (e.kind != ElementKind::CavityBarrier && e.kind != ElementKind::JointFiller) continue;
    const double deep =
        e.kind == ElementKind::CavityBarrier ? in.job.walls.cavity : in.job.walls.outerLeaf;
    if (deep <= 0 || e.quantity.amount <= 0) continue;
    const int width = mm(volume(e.solid) / (deep * e.quantity.amount));
    lengths[{e.kind, width}][e.placed.stage] += e.quantity.amount;
  }
  for (const auto& each : lengths) {
    const auto& [kind, width] = each.first;
    const std::string wide = std::to_string(width) + " wide";
    const auto tell = [&](const TakeoffItem& item) {
      for (const auto& [stage, metres] : each.second) tally.add(item, metres, stage);
    };
    if (kind == ElementKind::CavityBarrier) {
      tell({"Cavity barriers, " + wide, Unit::Metre, waste::kBoards, 1,
            "for a cavity of " + lengthText(in.job.walls.cavity) +
                ", upright and level; joints in the allowance"});
      continue;
    }
    tell({"Movement joint filler, " + wide, Unit::Metre, waste::kBoards, 1,
          "as deep as the leaf, " + lengthText(in.job.walls.outerLeaf)});
    tell({"Sealant in movement joints, " + wide, Unit::Metre, waste::kBoards, 1,
          "at the face, over the filler"});
  }
}

// Strips with the ties that hook into them, and pockets.
void countJunctions(const TakeoffInput& in, Tally& tally) {
  const std::vector<StripPlan> strips = starterStrips(in.job, in.settingOut);
  for (const Element& e : in.works.elements) {
    if (e.kind == ElementKind::StandingBuilding && e.quantity.unit == Unit::Each && e.removed)
      tally.add({"Pockets cut in standing walls, " + lengthText(e.top - e.underside) + " high",
                 Unit::Each, 0, 1, "for bricks of the new leaf that go into them"},
                e.quantity.amount, e.removed->stage);
    if (e.kind != ElementKind::StarterStrip) continue;
    tally.add({"Starter strips for walls", Unit::Metre, 0, 0.1,
               "on a standing building, as high as the leaf and it are"},
              e.quantity.amount, e.placed.stage);
    for (const StripPlan& strip : strips) {
      if (in.settingOut.walls[strip.plan.wall].name != e.wall) continue;
      for (const StripPlan::Length& length : strip.lengths) {
        if (length.stage != e.placed.stage || std::fabs(length.bottom - e.underside) > 1e-6 ||
            length.ties == 0)
          continue;
        tally.add({"Starter ties", Unit::Each, waste::kTies, 1,
                   "in bed joints of the outer leaf, at most " +
                       lengthText(in.job.junctions[strip.plan.junction].tieUp) + " apart"},
                  length.ties, e.placed.stage);
      }
    }
  }
}

// By size, smallest first.
void countPadstonesAndSills(const TakeoffInput& in, Tally& tally) {
  std::map<std::tuple<ElementKind, int, int>, std::vector<StageKey>> pieces;
  for (const Element& e : in.works.elements) {
    if (e.kind != ElementKind::Padstone && e.kind != ElementKind::MasonrySill) continue;
    const auto wall = in.settingOut.wallNamed(e.wall);
    if (!wall) continue;
    const Vec3 along(in.settingOut.walls[*wall].along, 0);
    const auto mm = [](double metres) { return static_cast<int>(std::lround(metres * 1000)); };
    pieces[{e.kind, mm(extentAlong(e.solid, along)), mm(e.top - e.underside)}].push_back(
        e.placed.stage);
  }
  for (const auto& [size, stages] : pieces) {
    const auto& [kind, length, height] = size;
    const bool sill = kind == ElementKind::MasonrySill;
    const TakeoffItem item{
        (sill ? "Sill " : "Padstone ") + std::to_string(length) + ", " + std::to_string(height) +
            " high",
        Unit::Each, 0, 1,
        sill ? "between the jambs, with its nose" : "under a lintel of the inner leaf"};
    for (const StageKey& stage : stages) tally.add(item, 1, stage);
  }
}

}  // namespace

void countBuiltIn(const TakeoffInput& in, Tally& tally) {
  countTies(in, tally);
  countBoards(in, tally);
  for (const Element& e : in.works.elements) {
    if (e.kind != ElementKind::CavityCloser) continue;
    tally.add({"Cavity closers, " + lengthText(in.job.walls.cavity), Unit::Metre, waste::kBoards, 1,
               "jambs, sills and thresholds"},
              e.quantity.amount, e.placed.stage);
  }
  countDampCourses(in, tally);
  countWeepVents(in, tally);
  countBarriersAndJoints(in, tally);
  countJunctions(in, tally);
  countPadstonesAndSills(in, tally);
  for (const Element& e : in.works.elements) {
    if (e.kind == ElementKind::AirBrick)
      tally.add({"Air bricks", Unit::Each, waste::kBreakage, 1, "each in the place of a brick"}, 1,
                e.placed.stage);
    else if (e.kind == ElementKind::VentSleeve)
      tally.add({"Vent sleeves", Unit::Each, 0, 1, "through the cavity and the inner leaf"}, 1,
                e.placed.stage);
  }
}

}  // namespace model
