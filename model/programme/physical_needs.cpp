#include "model/programme/physical_needs.h"

#include <algorithm>
#include <map>
#include <set>

namespace model {
namespace {

using E = ElementKind;
using K = StageKind;

constexpr double kTouch = 0.003;

struct Thing {
  const Element* element = nullptr;
  size_t placed = 0;   // stage by its place in the usual order, from 1; 0: there from the start
  size_t removed = 0;  // 0: stays
  Vec3 low{0, 0, 0}, high{0, 0, 0};
};

// Takes the shape of what is there already.
bool isPoured(ElementKind kind) {
  static const std::set<ElementKind> kinds{
      E::Blinding,   E::Foundation, E::CellarSlab, E::CellarWall, E::Backfill, E::Hardcore,
      E::GroundSlab, E::BeamFloor,  E::CavityFill, E::Core,       E::Screed,   E::FloorInsulation};
  return kinds.count(kind) > 0;
}

// Holds on to what is beside it.
bool isFixed(ElementKind kind) {
  static const std::set<ElementKind> kinds{E::CellarMembrane,   E::Render,         E::FasciaBoard,
                                           E::BargeBoard,       E::Window,         E::Door,
                                           E::StarterStrip,     E::EdgeProtection, E::WallTie,
                                           E::CavityInsulation, E::CavityBarrier};
  return kinds.count(kind) > 0;
}

bool holdsFixings(ElementKind kind) {
  static const std::set<ElementKind> kinds{E::CellarWall, E::OuterLeaf,        E::InnerLeaf,
                                           E::Rafter,     E::Lintel,           E::WallPlate,
                                           E::GardenWall, E::StandingBuilding, E::Core};
  return kinds.count(kind) > 0;
}

// What can be in the place of something that is taken away. A scaffold's box holds much that its
// tubes pass by: only what is spread or stood where its feet are has to wait for it.
bool isInTheWay(ElementKind gone, ElementKind later) {
  if (gone != E::Scaffold && gone != E::EdgeProtection) return true;
  return later == E::Topsoil || later == E::Backfill || later == E::Foundation ||
         later == E::GardenWall;
}

std::string named(const Element& element) {
  return element.name.empty() ? nameOf(element.kind) : element.name;
}

class Needs {
 public:
  Needs(const std::vector<StageKey>& usual, const Works& works) : stages_(usual) {
    std::map<StageKey, size_t> numbers;
    for (size_t i = 0; i < usual.size(); ++i) numbers.emplace(usual[i], i + 1);
    const auto numberOf = [&](const StageKey& key) {
      const auto found = numbers.find(key);
      return found == numbers.end() ? size_t{0} : found->second;
    };
    for (const Element& element : works.elements) {
      Thing thing;
      thing.element = &element;
      thing.placed = numberOf(element.placed.stage);
      thing.removed = element.removed ? numberOf(element.removed->stage) : 0;
      const Bounds box = bounds(element.solid);
      thing.low = box.low;
      thing.high = box.high;
      things_.push_back(thing);
    }
    std::sort(things_.begin(), things_.end(),
              [](const Thing& a, const Thing& b) { return a.low.x < b.low.x; });
  }

  std::vector<PhysicalNeed> all() {
    practice();
    for (const Thing& thing : things_) {
      if (thing.removed != thing.placed)
        need(thing.placed, thing.removed, named(*thing.element) + " is put there first");
    }
    for (size_t i = 0; i < things_.size(); ++i) {
      for (size_t j = i + 1; j < things_.size(); ++j) {
        if (things_[j].low.x > things_[i].high.x + kTouch) break;
        pair(things_[i], things_[j]);
        pair(things_[j], things_[i]);
      }
    }
    std::vector<PhysicalNeed> result;
    for (auto& [stages, why] : found_)
      result.push_back({stages.first - 1, stages.second - 1, std::move(why)});
    return result;
  }

 private:
  // Of what is usual only: a need that the usual order does not meet is none.
  void need(size_t before, size_t after, const std::string& why) {
    if (before == 0 || before >= after) return;
    found_.try_emplace({before, after}, why);
  }

  void pair(const Thing& a, const Thing& b) {
    const bool apart = a.low.y > b.high.y + kTouch || b.low.y > a.high.y + kTouch ||
                       a.low.z > b.high.z + kTouch || b.low.z > a.high.z + kTouch;
    if (apart) return;
    const Element &first = *a.element, &later = *b.element;
    const bool inside = a.low.x < b.high.x - kTouch && b.low.x < a.high.x - kTouch &&
                        a.low.y < b.high.y - kTouch && b.low.y < a.high.y - kTouch;
    // Where something was dug out or taken down.
    if (a.removed > 0 && inside && isInTheWay(first.kind, later.kind) &&
        a.low.z < b.high.z - kTouch && b.low.z < a.high.z - kTouch) {
      need(a.removed, b.placed,
           named(later) + " goes where " + named(first) + " is taken away first");
    }
    if (a.placed == b.placed) return;
    // Sheets are thin, and what is notched over something goes down beside it.
    constexpr double kHigher = 1e-4;
    if (inside && b.high.z > a.high.z + kHigher) {
      need(a.placed, b.placed, named(later) + " bears on " + named(first));
    } else if (isPoured(later.kind)) {
      need(a.placed, b.placed, named(later) + " is placed against " + named(first));
    } else if (isFixed(later.kind) && holdsFixings(first.kind)) {
      need(a.placed, b.placed, named(later) + " is fixed to " + named(first));
    }
  }

  // Common practice, no source, but for the cellar: backfill waits for the floor over it (Concrete
  // Construction, "Backfilling basics").
  void practice() {
    for (size_t i = 0; i < stages_.size(); ++i) {
      const StageKey& before = stages_[i];
      for (size_t j = i + 1; j < stages_.size(); ++j) {
        const char* why = whyAfter(before, stages_[j]);
        if (why) need(i + 1, j + 1, why);
      }
    }
  }

  static const char* whyAfter(const StageKey& before, const StageKey& after) {
    const K b = before.kind, a = after.kind;
    if (b == K::SiteSetUp) return "services are found and the site is made safe first";
    if (a == K::Completion) return "nothing is handed over before it is done";
    if (b == K::SettingOut && (a == K::CellarDig || a == K::TrenchDig))
      return "nothing is dug before it is set out";
    if (b == K::CellarDig && a == K::TrenchDig)
      return "the deepest is dug first: a dig beside a foundation undermines it";
    if (b == K::CellarMembrane && a == K::CellarBackfill) return "fill would bury bare walls";
    if (b == K::FloorOverCellar && a == K::CellarBackfill)
      return "the floor over the cellar props its walls before anything pushes on them";
    const bool laid = a == K::RaiseCorners || a == K::RunIn;
    if (b == K::ScaffoldLift && laid && before.storey == after.storey && before.lift == after.lift)
      return "it is laid from that scaffold";
    if (b == K::RaiseCorners && a == K::RunIn && before.storey == after.storey &&
        before.lift == after.lift)
      return "the line is pulled between the corners";
    if (b == K::ScaffoldRoof && a >= K::WallPlate && a <= K::RoofCovering)
      return "nobody works at the eaves without it";
    const bool fromScaffold = b == K::Gables || b == K::Rafters || b == K::Fascia ||
                              b == K::RoofCovering || b == K::Render || b == K::RaiseCorners ||
                              b == K::RunIn || b == K::WallPlate;
    if (fromScaffold && a == K::StrikeScaffold) return "it is done from the scaffold";
    return nullptr;
  }

  const std::vector<StageKey>& stages_;
  std::vector<Thing> things_;
  std::map<std::pair<size_t, size_t>, std::string> found_;
};

}  // namespace

std::vector<PhysicalNeed> physicalNeeds(const std::vector<StageKey>& usual, const Works& works) {
  return Needs(usual, works).all();
}

}  // namespace model
