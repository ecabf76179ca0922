#include "viewer/stage_work.h"

#include <algorithm>
#include <cmath>

#include <glm/common.hpp>
#include <glm/geometric.hpp>

namespace viewer {
namespace {

// Points over triangles by area, evenly strewn.
class Strewn {
 public:
  Strewn(const Scene& scene, std::vector<std::uint32_t> elements, int count)
      : scene_(scene), elements_(std::move(elements)) {
    double total = 0;
    forEachTriangle([&](const Triangle& t) { total += double(t.area); });
    step_ = count > 0 ? total / count : 0;
  }

  std::vector<WorkPoint> points() {
    std::vector<WorkPoint> points;
    if (step_ <= 0) return points;
    double due = step_ / 2;
    forEachTriangle([&](const Triangle& t) {
      for (due -= double(t.area); due <= 0; due += step_)
        points.push_back({inside(t, points.size()), t.normal, float(step_)});
    });
    return points;
  }

 private:
  struct Triangle {
    glm::vec3 a, b, c, normal;
    float area;
  };

  template <typename Use>
  void forEachTriangle(const Use& use) const {
    for (const std::uint32_t element : elements_) {
      const ElementRange& range = scene_.elements[element];
      for (std::uint32_t i = range.firstIndex; i + 2 < range.firstIndex + range.indexCount;
           i += 3) {
        Triangle t{at(i), at(i + 1), at(i + 2), {}, 0};
        const glm::vec3 cross = glm::cross(t.b - t.a, t.c - t.a);
        const float twice = glm::length(cross);
        if (twice < 1e-9f) continue;
        t.normal = cross / twice;
        t.area = twice / 2;
        use(t);
      }
    }
  }

  glm::vec3 at(std::uint32_t index) const {
    return scene_.vertices[scene_.indices[index]].position;
  }

  static glm::vec3 inside(const Triangle& t, size_t number) {
    auto [u, v] = std::pair(spread(number).x, spread(number).y);
    if (u + v > 1) u = 1 - u, v = 1 - v;
    return t.a + (t.b - t.a) * u + (t.c - t.a) * v;
  }

  const Scene& scene_;
  std::vector<std::uint32_t> elements_;
  double step_ = 0;
};

// Whether something stands right behind the place where a thing ended that has gone.
bool laidBare(const Picker& picker, const Frame& frame, const WorkPoint& end) {
  constexpr float kBefore = 0.04f, kBehind = 0.01f;
  const auto met = picker.pick({end.at - end.normal * kBefore, end.normal}, frame);
  return met && met->along <= kBefore + kBehind && met->along >= kBefore - kBehind &&
         glm::dot(met->normal, end.normal) < -0.5f;
}

// Whether a hand would find room before the surface, straight on or aslant.
bool open(const Picker& picker, const Frame& frame, const WorkPoint& point) {
  constexpr float kRoom = 0.4f, kOff = 0.002f;  // metres; a cavity is less than this aslant
  const glm::vec3 side = std::abs(point.normal.z) > 0.9f ? glm::vec3(1, 0, 0) : glm::vec3(0, 0, 1);
  const glm::vec3 u = glm::normalize(glm::cross(side, point.normal));
  const glm::vec3 v = glm::cross(point.normal, u);
  for (const glm::vec2 aslant : {glm::vec2(0, 0), {1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
    const glm::vec3 way = glm::normalize(point.normal + u * aslant.x + v * aslant.y);
    if (!picker.meetsBefore({point.at + point.normal * kOff, way}, kRoom, frame)) return true;
  }
  return false;
}

}  // namespace

glm::vec2 spread(size_t number) {
  constexpr double kFirst = 0.7548776662466927, kSecond = 0.5698402909980532;
  const auto share = [number](double by) {
    const double x = 0.5 + double(number) * by;
    return float(x - std::floor(x));
  };
  return {share(kFirst), share(kSecond)};
}

StageWork stageWork(const Scene& scene, int stage) {
  constexpr float kTiny = 1e-4f;  // of a stage
  StageWork work;
  const float from = float(stage), to = from + 1;
  glm::vec3 low(1e30f), high(-1e30f);
  for (std::uint32_t i = 0; i < scene.elements.size(); ++i) {
    const ElementRange& range = scene.elements[i];
    if (range.indexCount == 0) continue;
    const bool came = range.appears >= from - kTiny && range.appears < to - kTiny;
    const bool stays = range.removed.from >= to - kTiny;
    const bool went = range.appears < from - kTiny && range.removed.from >= from - kTiny && !stays;
    if (came && stays) work.made.push_back(i);
    if (went) work.taken.push_back(i);
    if (!(came && stays) && !went) continue;
    low = glm::min(low, range.low);
    high = glm::max(high, range.high);
  }
  if (!work.none()) work.low = low, work.high = high;
  return work;
}

StageWork shownWork(const Scene& scene, const Picker& picker, int stage) {
  constexpr int kLooks = 40;                           // at each element
  constexpr float kBuiltIn = 0.1f, kLeastLeft = 0.3f;  // shares of surface
  StageWork work = stageWork(scene, stage);
  Frame end;
  end.time = stage + 1;
  std::vector<std::uint32_t> shown;
  float all = 0, left = 0;
  for (const std::uint32_t element : work.made) {
    const auto points = Strewn(scene, {element}, kLooks).points();
    if (points.empty()) continue;
    const float area = points[0].area * float(points.size());
    all += area;
    int seen = 0;
    const auto enough = std::find_if(points.begin(), points.end(), [&](const WorkPoint& point) {
      seen += open(picker, end, point);
      return float(seen) >= kBuiltIn * float(points.size());
    });
    if (enough == points.end()) continue;
    left += area;
    shown.push_back(element);
  }
  if (left >= kLeastLeft * all) work.made = std::move(shown);
  return work;
}

std::vector<WorkPoint> workPoints(const Scene& scene, const Picker& picker, const StageWork& work,
                                  int stage, int count) {
  constexpr double kWorthALook = 0.03;  // of the surface of what went
  std::vector<WorkPoint> points = Strewn(scene, work.made, count).points();
  Frame end;
  end.time = stage + 1;
  std::vector<WorkPoint> taken = Strewn(scene, work.taken, count).points();
  const size_t all = taken.size();
  std::erase_if(taken, [&](const WorkPoint& point) { return !laidBare(picker, end, point); });
  // The feet of a scaffold lay nothing bare that anyone would look for.
  if (double(taken.size()) < kWorthALook * double(all)) return points;
  for (WorkPoint& point : taken) {
    point.normal = -point.normal;
    points.push_back(point);
  }
  return points;
}

}  // namespace viewer
