#include "tests/support/roofed_job.h"

#include <stdexcept>

#include "model/works/parts.h"

namespace model::test {
namespace {

std::string wallName(size_t i, size_t n) {
  return cornerLetter(i) + "-" + cornerLetter((i + 1) % n);
}

// A gable only where both corners are outward and square or blunt, and not two side by side.
std::vector<RoofEdge> someGables(Random& random, const Outline& outline) {
  std::vector<RoofEdge> edges;
  const size_t n = outline.size();
  bool last = true;
  for (size_t i = 1; i + 1 < n; ++i) {
    const auto turn = [&](size_t k) {
      return cross(outline[k] - outline[(k + n - 1) % n], outline[(k + 1) % n] - outline[k]);
    };
    const bool outward = turn(i) > 0.1 && turn((i + 1) % n) > 0.1;
    last = !last && outward && random() % 2 == 0;
    if (last) edges.push_back({wallName(i, n), EavesKind::Gable});
  }
  return edges;
}

}  // namespace

RoofedJob roofed(Job job) {
  RoofedJob made{std::move(job), {}, {}};
  made.settingOut = deriveSettingOut(made.job);
  if (made.settingOut.roof.faces.empty()) throw std::runtime_error("the roof is refused");
  buildCavityWalls(made.job, made.settingOut, made.works);
  buildWallPlates(made.job, made.settingOut, made.works);
  buildRafters(made.job, made.settingOut, made.works);
  buildFasciaBoards(made.job, made.settingOut, made.works);
  buildRoofCovering(made.job, made.settingOut, made.works);
  return made;
}

RoofedJob roofed(const Outline& outline, double pitch, const std::vector<std::string>& gables,
                 double spacing) {
  Job job;
  job.outline = outline;
  job.roof.pitch = pitch;
  job.roof.spacing = spacing;
  for (const std::string& wall : gables) job.roof.edges.push_back({wall, EavesKind::Gable});
  return roofed(std::move(job));
}

std::vector<RoofedJob> roofedAtRandom(unsigned seed, int count) {
  Random random(seed);
  std::vector<RoofedJob> jobs;
  while (int(jobs.size()) < count) {
    Job job;
    const double x = 2.7 + 0.225 * double(random() % 8), y = 2.7 + 0.225 * double(random() % 8);
    job.outline = gridPlan(random, 1 + int(random() % 6), false, x, y);
    if (random() % 4 == 0)
      job.outline = regularPlan(5 + int(random() % 5), 4 + double(random() % 4));
    if (random() % 3 == 0)
      for (Vec2& p : job.outline) p.x += 0.3 * p.y;
    if (random() % 2 == 0) job.outline = turned(job.outline, double(random() % 628) / 100);
    job.roof.pitch = 20 + double(random() % 40);
    job.roof.edges = someGables(random, job.outline);
    try {
      jobs.push_back(roofed(job));
    } catch (const std::runtime_error&) {
      continue;  // gables that cannot be roofed
    }
  }
  return jobs;
}

std::vector<const Element*> ofKind(const Works& works, ElementKind kind) {
  std::vector<const Element*> found;
  for (const Element& element : works.elements)
    if (element.kind == kind) found.push_back(&element);
  return found;
}

}  // namespace model::test
