#include "model/works/ground_parts.h"

#include <algorithm>
#include <numeric>

#include "model/works/ground_floor.h"

namespace model {

namespace {

using Placing = std::function<void(Element&, const Bounds&)>;

// Of the trench stage, the part in which the inside is reduced to the oversite formation.
constexpr double kReducing = 0.15;
// Of a backfilling stage: by how much the fill follows the supports.
constexpr double kBehindSupports = 0.05;

Placing rising(StageKind stage, double begin = 0, double end = 1) {
  return [=](Element& e, const Bounds& b) {
    e.placed = upward({stage}, b.low.z, b.high.z, begin, end);
  };
}

Placing sinking(StageKind stage, double begin = 0, double end = 1) {
  return [=](Element& e, const Bounds& b) {
    e.removed = downward({stage}, b.high.z, b.low.z, begin, end);
  };
}

// From west to east over the plan: how a machine works over a surface.
Placement acrossPlan(StageKind stage, const Bounds& b) {
  Placement placement;
  placement.stage = {stage};
  placement.direction = {1, 0, 0};
  placement.low = b.low.x;
  placement.high = std::max(b.high.x, b.low.x + 1e-6);
  return placement;
}

class Maker {
 public:
  Maker(const Job& job, const SettingOut& out, const GroundZones& zones)
      : job_(job), out_(out), zones_(zones) {}

  GroundParts make() {
    surface();
    cellar();
    foundations();
    fills();
    gardens();
    return std::move(result_);
  }

 private:
  std::uint32_t part(const std::string& id, const std::string& name, ElementKind kind,
                     Material material, Placing placing = {}) {
    GroundPart part;
    part.element.id = id;
    part.element.name = name;
    part.element.kind = kind;
    part.element.material = material;
    part.placing = std::move(placing);
    result_.parts.push_back(std::move(part));
    return static_cast<std::uint32_t>(result_.parts.size() - 1);
  }

  void surface() {
    result_.ground = part("ground", "Ground", ElementKind::Ground, Material::Earth);
    result_.topsoilKept =
        part("topsoil/kept", "Topsoil that stays", ElementKind::Topsoil, Material::Topsoil);
    result_.topsoilStripped = part(
        "topsoil/stripped", "Topsoil to strip", ElementKind::Topsoil, Material::Topsoil,
        [](Element& e, const Bounds& b) { e.removed = acrossPlan(StageKind::TopsoilStrip, b); });
    result_.reducedLevel =
        part(kReducedLevelId, "Dig to the oversite formation", ElementKind::Spoil, Material::Earth,
             sinking(StageKind::TrenchDig, 0, kReducing));
  }

  void cellar() {
    const auto count = static_cast<double>(zones_.benches.size());
    for (size_t i = 0; i < zones_.benches.size(); ++i) {
      const auto at = static_cast<double>(i);
      const std::string number = std::to_string(i + 1);
      result_.benches.push_back(part("spoil/cellar/bench " + number, "Cellar dig, bench " + number,
                                     ElementKind::Spoil, Material::Earth,
                                     sinking(StageKind::CellarDig, at / count, (at + 1) / count)));
    }
    result_.cellarBlinding = part("cellar/blinding", "Cellar blinding", ElementKind::Blinding,
                                  Material::LeanConcrete, [](Element& e, const Bounds& b) {
                                    e.placed = acrossPlan(StageKind::CellarBlinding, b);
                                    e.placed.end = kBedLaid;
                                  });
    result_.cellarSlab = part("cellar/slab", "Cellar slab", ElementKind::CellarSlab,
                              Material::Concrete, rising(StageKind::CellarSlab, kBeforePour));
    result_.cellarWall = part("cellar/walls", "Cellar walls", ElementKind::CellarWall,
                              Material::Concrete, rising(StageKind::CellarWalls, 0, 0.8));
    result_.cellarMembrane =
        part("cellar/membrane", "Cellar waterproofing and its protection",
             ElementKind::CellarMembrane, Material::Membrane, rising(StageKind::CellarMembrane));
    result_.cellarMakeUp =
        part("cellar/make-up", "Cellar floor insulation", ElementKind::FloorInsulation,
             Material::Insulation, rising(StageKind::FloorFinish, 0, 0.2));
    result_.cellarScreed = part("cellar/screed", "Cellar screed", ElementKind::Screed,
                                Material::Screed, rising(StageKind::FloorFinish, 0.2, 0.4));
  }

  // Which of its wall's lengths a run is, from 1, and how many there are.
  std::array<size_t, 2> lengthOf(size_t run) const {
    size_t number = 0, count = 0;
    for (size_t i = 0; i < out_.foundations.size(); ++i) {
      if (out_.foundations[i].wall != out_.foundations[run].wall) continue;
      if (out_.foundations[i].onCellar != out_.foundations[run].onCellar) continue;
      ++count;
      if (i <= run) ++number;
    }
    return {number, count};
  }

  void foundations() {
    const auto turn = foundationTurns(out_);
    const auto count = static_cast<double>(turn.size());
    const bool strip = job_.foundations.kind == FoundationKind::Strip;
    for (size_t i = 0; i < out_.foundations.size(); ++i) {
      const FoundationRun& run = out_.foundations[i];
      const std::string wall = out_.walls[run.wall].name;
      const auto [length, lengths] = lengthOf(i);
      const std::string piece = lengths > 1 ? ", part " + std::to_string(length) : "";
      // A run on the cellar has no concrete of its own, but perhaps some beside the cellar's wall.
      const std::string at =
          "wall " + wall + "/" + (run.onCellar ? "cellar " : "") + std::to_string(length);
      const double begin = turn[i] / count, end = (turn[i] + 1) / count;
      const auto [digBegin, digEnd] = trenchDigShare(turn[i], count);
      const auto numbered = [&](const char* id, const std::string& name, ElementKind kind,
                                Material material, Placing placing) {
        const auto index = part(std::string(id) + "/" + at, name + ", wall " + wall + piece, kind,
                                material, std::move(placing));
        result_.parts[index].element.wall = wall;
        return index;
      };
      result_.trench.push_back(numbered("spoil/trench", "Trench dig", ElementKind::Spoil,
                                        Material::Earth,
                                        sinking(StageKind::TrenchDig, digBegin, digEnd)));
      result_.massFill.push_back(numbered("lean concrete", "Lean concrete down to firm ground",
                                          ElementKind::Blinding, Material::LeanConcrete,
                                          rising(StageKind::TrenchBlinding, 0, 0.7)));
      result_.blinding.push_back(numbered("blinding", "Blinding", ElementKind::Blinding,
                                          Material::LeanConcrete,
                                          rising(StageKind::TrenchBlinding, 0.7, 1)));
      result_.foundation.push_back(numbered("foundation",
                                            strip ? "Strip foundation" : "Trench fill foundation",
                                            ElementKind::Foundation, Material::Concrete,
                                            rising(StageKind::FoundationPour, begin, end)));
    }
  }

  void fills() {
    const auto refilling = [this](StageKind stage) {
      const Placement placed = backfillRising(stage, out_);
      return [placed](Element& e, const Bounds&) { e.placed = placed; };
    };
    result_.cellarBackfill =
        part("backfill/cellar", "Backfill round the cellar", ElementKind::Backfill, Material::Earth,
             refilling(StageKind::CellarBackfill));
    result_.trenchBackfillOutside =
        part("backfill/trenches outside", "Backfill outside the walls", ElementKind::Backfill,
             Material::Earth, refilling(StageKind::TrenchBackfill));
    result_.trenchBackfillInside =
        part("backfill/trenches inside", "Backfill inside the walls", ElementKind::Backfill,
             Material::Earth, refilling(StageKind::TrenchBackfill));
    result_.hardcore = part("hardcore", "Hardcore under the floor", ElementKind::Hardcore,
                            Material::Hardcore, rising(StageKind::Oversite, 0, kBedLaid));
    result_.topsoilBack = part(
        "topsoil/put back", "Topsoil put back", ElementKind::Topsoil, Material::Topsoil,
        [](Element& e, const Bounds& b) { e.placed = acrossPlan(StageKind::OutsideWorks, b); });
  }

  // Each wall has its share of the stages: dug one after another, then poured; filled in once the
  // brickwork is up.
  void gardens() {
    const auto count = static_cast<double>(zones_.gardens.size());
    for (size_t i = 0; i < zones_.gardens.size(); ++i) {
      const double from = static_cast<double>(i) / count, to = static_cast<double>(i + 1) / count;
      const auto share = [&](double begin, double end) {
        return std::array{begin + (end - begin) * from, begin + (end - begin) * to};
      };
      const std::string name = gardenWallName(job_, i), id = gardenWallId(i);
      const auto dig = share(0, kGardenDug), pour = share(kGardenDug, 1);
      const auto back = share(kGardenBricksUp, kGardenFilled);
      result_.gardenTrench.push_back(part("spoil/" + id, name + ", trench dig", ElementKind::Spoil,
                                          Material::Earth,
                                          sinking(StageKind::GardenFoundations, dig[0], dig[1])));
      result_.gardenFoundation.push_back(
          part("foundation/" + id, name + ", strip foundation", ElementKind::Foundation,
               Material::Concrete, rising(StageKind::GardenFoundations, pour[0], pour[1])));
      result_.gardenBackfill.push_back(part("backfill/" + id, name + ", backfill",
                                            ElementKind::Backfill, Material::Earth,
                                            rising(StageKind::GardenWalls, back[0], back[1])));
      for (const auto* made :
           {&result_.gardenTrench, &result_.gardenFoundation, &result_.gardenBackfill})
        result_.parts[made->back()].element.wall = id;
    }
  }

  const Job& job_;
  const SettingOut& out_;
  const GroundZones& zones_;
  GroundParts result_;
};

}  // namespace

std::vector<double> foundationTurns(const SettingOut& settingOut) {
  const auto& runs = settingOut.foundations;
  std::vector<size_t> order(runs.size());
  std::iota(order.begin(), order.end(), size_t{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](size_t a, size_t b) { return runs[a].top < runs[b].top; });
  std::vector<double> turn(order.size());
  for (size_t i = 0; i < order.size(); ++i) turn[order[i]] = static_cast<double>(i);
  return turn;
}

std::array<double, 2> trenchDigShare(double turn, double runs) {
  const double each = (1 - kReducing) / runs;
  return {kReducing + each * turn, kReducing + each * (turn + 1)};
}

Placement backfillRising(StageKind stage, const SettingOut& settingOut) {
  const bool cellar = stage == StageKind::CellarBackfill;
  double low = cellar ? settingOut.levels.cellarFormation : settingOut.levels.oversite;
  double high = settingOut.levels.groundHigh;
  for (const FoundationRun& run : settingOut.foundations) low = std::min(low, run.top);
  for (const Vec3& p : settingOut.terrain.points) high = std::max(high, p.z);
  return upward({stage}, low, high, kBehindSupports, 1);
}

Placement supportLeaving(StageKind stage, const SettingOut& settingOut) {
  Placement placement = backfillRising(stage, settingOut);
  placement.begin = 0;
  placement.end = 1 - kBehindSupports;
  return placement;
}

GroundParts makeGroundParts(const Job& job, const SettingOut& settingOut,
                            const GroundZones& zones) {
  return Maker(job, settingOut, zones).make();
}

}  // namespace model
