#include "viewer/stage_view.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>
#include <numeric>
#include <tuple>

#include <glm/common.hpp>
#include <glm/geometric.hpp>

#include "viewer/commands/clear_view.h"
#include "viewer/framing.h"
#include "viewer/kept_view.h"
#include "viewer/section.h"
#include "viewer/stage_work.h"
#include "viewer/triangle_tree.h"

namespace viewer {
namespace {

constexpr double kPi = std::numbers::pi;

enum class Cut { None, AboveHead, AboveWork, EastOrWest, NorthOrSouth };

// One way to look, and what it is held to cost against seeing all of the work.
struct Way {
  double azimuth = 0, elevation = 0;
  Cut cut = Cut::None;
  SeeThrough seeThrough = SeeThrough::Nothing;
  double cost = 0;
};

double turned(double a, double b) { return std::abs(std::remainder(a - b, 2 * kPi)); }

std::vector<Way> waysToLook(double usual, const Way* before) {
  struct Height {
    double elevation, cost;
  };
  // Lower ones are plainer; from 80 degrees it is nearly a plan.
  constexpr std::array<Height, 6> kHeights{
      {{0.5, 0}, {0.7, 0.008}, {0.95, 0.016}, {0.3, 0.02}, {1.2, 0.035}, {1.4, 0.05}}};
  constexpr double kQuarter = 0.03, kBack = 0.008, kOther = 0.006, kSquare = 0.012, kSection = 0.03,
                   kGround = 0.06, kOthers = 0.15;
  // Turning home costs little, so that no stage is seen from where only an earlier one had to be.
  constexpr double kHome = 0.004;
  std::vector<Way> ways;
  for (int eighth = 0; eighth < 8; ++eighth) {
    for (const Height& height : kHeights) {
      for (const Cut cut :
           {Cut::None, Cut::AboveHead, Cut::AboveWork, Cut::EastOrWest, Cut::NorthOrSouth}) {
        for (const SeeThrough seeThrough :
             {SeeThrough::Nothing, SeeThrough::Ground, SeeThrough::Others}) {
          if (seeThrough == SeeThrough::Others && cut != Cut::None) continue;
          Way way{std::remainder(kPi / 4 + eighth * kPi / 4, 2 * kPi), height.elevation, cut,
                  seeThrough, height.cost};
          way.cost += kBack * turned(way.azimuth, usual) / (kPi / 2);
          if (eighth % 2 == 1) way.cost += kSquare;  // only one side of a house
          if (cut != Cut::None) way.cost += kSection;
          if (seeThrough == SeeThrough::Ground) way.cost += kGround;
          if (seeThrough == SeeThrough::Others) way.cost += kOthers;
          if (before) {
            const double turn = turned(way.azimuth, before->azimuth);
            const double home =
                std::clamp(turned(before->azimuth, usual) - turned(way.azimuth, usual), 0.0, turn);
            way.cost += (kQuarter * (turn - home) + kHome * home) / (kPi / 2);
            if (way.elevation != before->elevation) way.cost += kOther;
            if (way.cut != before->cut) way.cost += kOther;
            if (way.seeThrough != before->seeThrough) way.cost += kOther;
          }
          ways.push_back(way);
        }
      }
    }
  }
  std::stable_sort(ways.begin(), ways.end(),
                   [](const Way& a, const Way& b) { return a.cost < b.cost; });
  return ways;
}

class StageLook {
 public:
  StageLook(const Scene& scene, const Picker& picker, int stage)
      : scene_(scene),
        picker_(picker),
        stage_(stage),
        work_(shownWork(scene, picker, stage)),
        bare_(workPoints(scene, picker, {{}, work_.taken, {}, {}}, stage, kBare)),
        ownIndices_(indicesOf(scene, work_.made)),
        own_(ownIndices_, scene.vertices.empty() ? nullptr : &scene.vertices[0].position,
             sizeof(Vertex)),
        layout_(layOutSheet(kWide, kHigh, 1)) {
    isOwn_.resize(scene.elements.size());
    ofGround_ = !work_.taken.empty();
    for (const std::uint32_t element : work_.made) {
      isOwn_[element] = true;
      ofGround_ |= scene.elements[element].soil;
    }
    findBoxes();
  }

  std::optional<StageView> along(const Way& way) const {
    StageView view;
    view.camera.azimuth = way.azimuth;
    view.camera.elevation = way.elevation;
    view.seeThrough = way.seeThrough;
    // What is laid bare belongs to what stood before, and would itself not be there.
    if (way.seeThrough == SeeThrough::Ground && ofGround_) return std::nullopt;
    if (way.seeThrough == SeeThrough::Others && !bare_.empty()) return std::nullopt;
    if (!cutInto(view, way)) return std::nullopt;
    view.low = low_;
    view.high = way.cut == Cut::AboveHead || way.cut == Cut::AboveWork
                    ? glm::vec3(high_.x, high_.y, std::min(high_.z, -view.section.plane.w))
                    : high_;
    return view;
  }

  // False for stages that make nothing and lay nothing bare: no way to look shows more of it.
  bool hasWork() const { return !work_.made.empty() || !bare_.empty(); }

  // The share of the work, by how large it looks, that nothing else hides; nothing as soon as it
  // cannot come to more than `least`.
  std::optional<float> seenIn(const StageView& view, float least, size_t sights = kSights) const {
    constexpr float kAtIt = 0.02f;
    Frame frame;
    frame.time = stage_ + 1;
    frame.stage = stage_;
    frame.section = view.section;
    frame.seeThrough = view.seeThrough;
    const std::vector<Piece>& pieces = piecesFrom(view, sights);
    const double all =
        std::accumulate(pieces.begin(), pieces.end(), 0.0,
                        [](double sum, const Piece& piece) { return sum + piece.size; });
    if (all <= 0) return 1.0f;
    double hidden = 0;
    for (const auto& [ray, along, size] : pieces) {
      const glm::vec4 at(ray.from + ray.direction * along, 1);
      const bool cutAway = view.section.on && glm::dot(view.section.plane, at) > 0;
      if (!cutAway && !picker_.meetsBefore(ray, along - kAtIt, frame)) continue;
      hidden += size;
      if (float(1 - hidden / all) <= least) return std::nullopt;
    }
    return float(1 - hidden / all);
  }

  // The share of the picture that standing buildings take up before what it is to show.
  float inTheWay(const StageView& view) const {
    constexpr int kRays = 48;
    const Camera camera = cameraOf(view, layout_);
    const float reach = glm::distance(camera.eye(), (view.low + view.high) * 0.5f);
    Frame frame;
    frame.time = stage_ + 1;
    frame.section = view.section;
    int met = 0;
    for (int i = 0; i < kRays; ++i) {
      const auto hit =
          picker_.pick(camera.rayThrough(spread(size_t(i)), double(kWide) / kHigh), frame);
      if (hit && hit->along < reach && scene_.elements[hit->element].quiet && !isOwn_[hit->element])
        ++met;
    }
    return float(met) / kRays;
  }

 private:
  static constexpr int kWide = 1280, kHigh = 720;
  static constexpr int kBare = 160;          // points on what was laid bare
  static constexpr size_t kSights = 250;     // rays that meet what was made
  static constexpr size_t kRaysASight = 24;  // at most, to find so many

  // A small piece of the work as it would look with nothing else about.
  struct Piece {
    Ray ray;      // from the eye
    float along;  // to where it is
    double size;  // about how large it looks
  };

  // Views that differ in their cut or in what is seen through often stand in the same place.
  const std::vector<Piece>& piecesFrom(const StageView& view, size_t most) const {
    const auto [at, isNew] = pieces_.try_emplace(
        {view.camera.azimuth, view.camera.elevation, view.high.z, most}, std::vector<Piece>());
    if (isNew) at->second = pieces(cameraOf(view, layout_), most);
    return at->second;
  }

  std::vector<Piece> pieces(const Camera& camera, size_t most) const {
    std::vector<Piece> pieces;
    constexpr float kEdgeOn = 0.02f;
    const auto any = [](const TriangleHit&) { return true; };
    for (const WorkPoint& point : bare_) {
      const glm::vec3 way = point.at - camera.eye();
      const float distance = glm::length(way);
      const Ray ray{camera.eye(), way / distance};
      const float facing = -glm::dot(ray.direction, point.normal);
      if (facing < kEdgeOn) continue;
      const TriangleHit self = own_.nearest(ray, any);
      if (self.along >= 0 && self.along < distance) continue;
      pieces.push_back({ray, distance, double(point.area * facing / (distance * distance))});
    }
    if (work_.made.empty()) return pieces;
    constexpr double kAspect = double(kWide) / kHigh;
    glm::vec2 from(1e9f), to(-1e9f);
    for (int corner = 0; corner < 8; ++corner) {
      const auto at = camera.project(
          {corner & 1 ? work_.high.x : work_.low.x, corner & 2 ? work_.high.y : work_.low.y,
           corner & 4 ? work_.high.z : work_.low.z},
          kAspect);
      if (!at) return pieces;
      from = glm::min(from, glm::vec2(*at));
      to = glm::max(to, glm::vec2(*at));
    }
    const double height = 2 * std::tan(camera.fieldOfView / 2), width = height * kAspect;
    const glm::vec2 frame = to - from;
    std::vector<std::pair<Ray, float>> sights;
    int tried = 0;
    for (; tried < int(most * kRaysASight) && sights.size() < most; ++tried) {
      const Ray ray = camera.rayThrough(from + frame * spread(size_t(tried)), kAspect);
      const TriangleHit self = own_.nearest(ray, any);
      if (self.along >= 0) sights.emplace_back(ray, self.along);
    }
    const double size = double(frame.x) * width * double(frame.y) * height / tried;
    for (const auto& [ray, along] : sights) pieces.push_back({ray, along, size});
    return pieces;
  }

  static std::vector<std::uint32_t> indicesOf(const Scene& scene,
                                              const std::vector<std::uint32_t>& elements) {
    std::vector<std::uint32_t> indices;
    for (const std::uint32_t element : elements) {
      const ElementRange& range = scene.elements[element];
      const auto first = scene.indices.begin() + range.firstIndex;
      indices.insert(indices.end(), first, first + range.indexCount);
    }
    return indices;
  }

  // What is to be in the picture: the work, and as much round it as tells where on the site it is.
  void findBoxes() {
    constexpr float kRound = 0.6f, kShare = 0.6f;  // metres; of the building's size
    // Of the work's own size, and metres: a small thing is not lost in a large building or among
    // its garden walls.
    constexpr float kTimes = 2.0f, kLeastRound = 6.0f;
    glm::vec3 low = scene_.buildingLow, high = scene_.buildingHigh;
    standing_ = -1e30f;
    for (const ElementRange& range : scene_.elements) {
      if (range.soil || range.quiet || range.appears > float(stage_) + 1 ||
          range.goes <= float(stage_) + 1)
        continue;
      standing_ = std::max(standing_, range.high.z);
    }
    if (work_.none()) {  // what stands by then, or before there is anything the place for it
      low_ = low, high_ = high;
      if (standing_ > low.z) high_.z = std::clamp(standing_, std::min(low.z + 1, high.z), high.z);
      return;
    }
    low_ = work_.low - glm::vec3(kRound, kRound, 0);
    high_ = work_.high + glm::vec3(kRound, kRound, 0);
    for (int axis : {0, 1}) {
      const float own = (work_.high - work_.low)[axis];
      const float least =
          std::min((high[axis] - low[axis]) * kShare, std::max(own * kTimes, kLeastRound));
      const float lacking = least - (high_ - low_)[axis];
      if (lacking <= 0) continue;
      // To both sides, but rather over the building than past it.
      float down = lacking / 2;
      if (low_[axis] - down < low[axis]) down = std::max(0.0f, low_[axis] - low[axis]);
      if (high_[axis] + lacking - down > high[axis])
        down = lacking - std::max(0.0f, high[axis] - high_[axis]);
      low_[axis] -= down;
      high_[axis] += lacking - down;
    }
    low_.z = std::min(low_.z, std::max(low.z, 0.0f));
    high_.z = std::max({high_.z, std::min(standing_, high.z), low_.z + 1});
  }

  // False where that cut makes no sense.
  bool cutInto(StageView& view, const Way& way) const {
    constexpr float kHead = 1.0f, kClear = 0.02f, kAcross = 0.2f;
    const glm::vec2 towardsEye{-std::sin(way.azimuth), -std::cos(way.azimuth)};
    const auto upright = [&](int axis) {
      if (std::abs(towardsEye[axis]) < kAcross) return false;
      const int side = towardsEye[axis] > 0 ? 1 : -1;
      const float at = side > 0 ? work_.high[axis] + kClear : work_.low[axis] - kClear;
      glm::vec4 plane{0, 0, 0, -float(side) * at};
      plane[axis] = float(side);
      view.section = {true, plane};
      return true;
    };
    const auto level = [&](float over) {
      const float at = work_.high.z + over;
      view.section = levelSection(double(at));
      return at < standing_;
    };
    switch (way.cut) {
      case Cut::None:
        return true;
      case Cut::AboveHead:
        return level(kHead);
      case Cut::AboveWork:
        return level(kClear);
      case Cut::EastOrWest:
        return upright(0);
      case Cut::NorthOrSouth:
        return upright(1);
    }
    return false;
  }

  const Scene& scene_;
  const Picker& picker_;
  int stage_;
  StageWork work_;
  mutable std::map<std::tuple<double, double, float, size_t>, std::vector<Piece>> pieces_;
  std::vector<WorkPoint> bare_;
  std::vector<std::uint32_t> ownIndices_;
  TriangleTree own_;
  SheetLayout layout_;
  std::vector<bool> isOwn_;
  bool ofGround_ = false;  // seen through, the work itself would not be there
  glm::vec3 low_{0}, high_{0};
  float standing_ = 0;  // the highest there is of the building
};

// Less than nearly all of the work costs more than any way to look.
constexpr double kNearlyAll = 0.94, kLost = 4;

double worthOf(float seen) {
  return double(seen) - kLost * std::max(0.0, kNearlyAll - double(seen));
}

// What has to be seen for as much worth.
float seenFor(double worth) {
  return float(worth >= kNearlyAll ? worth : (worth + kLost * kNearlyAll) / (1 + kLost));
}

Camera clearCorner(const model::Model& model, const Scene& scene) {
  return standardView(clearView(model), scene.buildingLow, scene.buildingHigh, 1.5)
      .value_or(Camera{});
}

}  // namespace

void eachStageView(const model::Model& model, const Scene& scene, const Picker& picker,
                   const std::function<bool(const StageView&)>& take) {
  const Camera corner = clearCorner(model, scene);
  std::optional<Way> before;
  const auto chosen = [&](size_t i) -> StageView {
    if (const auto kept = model.programme.stages[i].view)
      return shownView(model.job.programme.views[*kept], model, scene);
    const StageLook look(scene, picker, int(i));
    // Without work the building is looked at, from where it is seen clear of what stands round it.
    const bool asBefore = before && look.hasWork();
    const std::vector<Way> ways = waysToLook(corner.azimuth, asBefore ? &*before : nullptr);
    std::optional<StageView> best;
    double most = -1e30;
    for (const Way& way : ways) {
      if (most >= 1 - way.cost) break;  // none of the rest can be better
      auto view = look.along(way);
      if (!view) continue;
      constexpr size_t kGlance = 50;
      constexpr float kOut = 0.12f;  // how far a glance may be out
      const float least = seenFor(most + way.cost);
      if (!look.seenIn(*view, least - kOut, kGlance)) continue;
      const auto seen = look.seenIn(*view, least);
      if (!seen) continue;
      view->seen = *seen;
      constexpr double kInTheWay = 0.5;
      const double worth = worthOf(view->seen) - way.cost -
                           (look.hasWork() ? kInTheWay * double(look.inTheWay(*view)) : 0);
      if (worth <= most) continue;
      most = worth;
      best = view;
      before = way;
    }
    return best.value_or(StageView{});
  };
  for (size_t i = 0; i < model.programme.stages.size(); ++i)
    if (!take(chosen(i))) return;
}

std::vector<StageView> stageViews(const model::Model& model, const Scene& scene,
                                  const Picker& picker) {
  std::vector<StageView> views;
  eachStageView(model, scene, picker, [&](const StageView& view) {
    views.push_back(view);
    return true;
  });
  return views;
}

StageView finishedView(const model::Model& model, const Scene& scene) {
  if (!model.programme.stages.empty()) {
    if (const auto kept = model.programme.stages.back().view)
      return shownView(model.job.programme.views[*kept], model, scene);
  }
  StageView whole;
  whole.camera = clearCorner(model, scene);
  whole.low = scene.buildingLow;
  whole.high = scene.buildingHigh;
  return whole;
}

Camera cameraOf(const StageView& view, const SheetLayout& layout) {
  return view.kept ? view.camera : framed(view.camera, view.low, view.high, layout);
}

bool sameView(const StageView& a, const StageView& b) {
  constexpr float kSame = 0.001f;
  const auto near = [](const glm::vec3& p, const glm::vec3& q) {
    return glm::distance(p, q) < kSame;
  };
  return a.kept == b.kept && a.seeThrough == b.seeThrough && a.section.on == b.section.on &&
         (!a.section.on || glm::distance(a.section.plane, b.section.plane) < kSame) &&
         std::abs(a.camera.azimuth - b.camera.azimuth) < 1e-6 &&
         std::abs(a.camera.elevation - b.camera.elevation) < 1e-6 &&
         (a.kept ? near(a.camera.target, b.camera.target) &&
                       std::abs(a.camera.distance - b.camera.distance) < double(kSame) &&
                       a.camera.parallel == b.camera.parallel
                 : near(a.low, b.low) && near(a.high, b.high));
}

}  // namespace viewer
