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
  Strewn(const Scene& scene, const std::vector<std::uint32_t>& elements, int count)
      : scene_(scene), elements_(elements) {
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

  // Two numbers that fill the square evenly as they count up.
  static glm::vec3 inside(const Triangle& t, size_t number) {
    constexpr double kFirst = 0.7548776662466927, kSecond = 0.5698402909980532;
    const auto share = [number](double by) {
      const double x = 0.5 + double(number) * by;
      return float(x - std::floor(x));
    };
    float u = share(kFirst), v = share(kSecond);
    if (u + v > 1) u = 1 - u, v = 1 - v;
    return t.a + (t.b - t.a) * u + (t.c - t.a) * v;
  }

  const Scene& scene_;
  const std::vector<std::uint32_t>& elements_;
  double step_ = 0;
};

// Whether something stands right behind the place where a thing ended that has gone.
bool laidBare(const Picker& picker, const Frame& frame, const WorkPoint& end) {
  constexpr float kBefore = 0.04f, kBehind = 0.01f;
  const auto met = picker.pick({end.at - end.normal * kBefore, end.normal}, frame);
  return met && met->along <= kBefore + kBehind && met->along >= kBefore - kBehind &&
         glm::dot(met->normal, end.normal) < -0.5f;
}

}  // namespace

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

std::vector<WorkPoint> workPoints(const Scene& scene, const Picker& picker, const StageWork& work,
                                  int stage, int count) {
  std::vector<WorkPoint> points = Strewn(scene, work.made, count).points();
  Frame end;
  end.time = stage + 1;
  for (WorkPoint& point : Strewn(scene, work.taken, count).points()) {
    if (!laidBare(picker, end, point)) continue;
    point.normal = -point.normal;
    points.push_back(point);
  }
  return points;
}

}  // namespace viewer
