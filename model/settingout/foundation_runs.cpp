// Lengths of wall by the level of what they stand on.
#include <algorithm>
#include <cmath>
#include <map>

#include <glm/geometric.hpp>

#include "model/settingout/derive.h"

namespace model {

namespace {

constexpr double kShortest = 1e-3;  // metres: shorter runs are not built

struct Span {
  double from = 0, to = 0;
};

// The lengths of a wall whose masonry touches the cellar's walls or their waterproofing.
std::vector<Span> onCellar(const SettingOut& out, const Job& job, size_t i) {
  std::vector<Span> spans;
  if (out.cellarOutline.empty()) return spans;
  const Polygon inner = out.ring(out.faceDistances.innerFace);
  const WallLine& wall = out.walls[i];
  const Polygon band{wall.start, wall.end, inner[wall.to], inner[wall.from]};
  const Polygon grown = offsetMitred(out.cellarOutline, -job.cellar->membrane);
  for (const Region& region : intersect({{band, {}}}, {{grown, {}}})) {
    Span span{1e300, -1e300};
    for (const Vec2& p : region.outer) {
      const double s = glm::dot(p - wall.start, wall.along);
      span.from = std::min(span.from, s);
      span.to = std::max(span.to, s);
    }
    span.from = std::max(span.from, 0.0);
    span.to = std::min(span.to, wall.length);
    // To a tenth of a millimetre: the intersection is worked on a grid.
    span.from = std::round(span.from * 1e4) / 1e4;
    if (span.to < wall.length - kShortest)
      span.to = std::round(span.to * 1e4) / 1e4;
    else
      span.to = wall.length;
    if (span.to - span.from > kShortest) spans.push_back(span);
  }
  return spans;
}

struct Step {
  Span span;
  double top = 0;
};

std::vector<Step> stepsOf(const Job& job, const SettingOut& out, size_t i) {
  std::vector<Step> steps;
  const WallLine& wall = out.walls[i];
  for (const FoundationStep& given : job.foundations.steps) {
    if (out.wallNamed(given.wall) != i) continue;
    const double to = given.to.value_or(wall.length);
    const std::string first = given.wall.substr(0, given.wall.find('-'));
    if (first == out.corners[wall.from].letter)
      steps.push_back({{given.from, to}, given.top});
    else
      steps.push_back({{wall.length - to, wall.length - given.from}, given.top});
  }
  return steps;
}

FoundationRun runAt(const Job& job, const SettingOut& out, size_t i, double s,
                    const std::vector<Step>& steps, const std::vector<Span>& cellar) {
  const Levels& levels = out.levels;
  FoundationRun run;
  run.wall = i;
  for (const Span& span : cellar) {
    if (s <= span.from || s >= span.to) continue;
    run.onCellar = true;
    run.top = run.underside = run.formation = levels.cellarWallTop;
    return run;
  }
  run.top = levels.foundationTop;
  for (const Step& step : steps) {
    if (s > step.span.from && s < step.span.to) run.top = step.top;
  }
  const double thickness =
      levels.foundationTop - levels.foundationFormation - job.foundations.blinding;
  run.underside = run.top - thickness;
  run.formation = run.underside - job.foundations.blinding;
  return run;
}

void runsOf(const Job& job, SettingOut& out, size_t i) {
  const std::vector<Step> steps = stepsOf(job, out, i);
  const std::vector<Span> cellar = onCellar(out, job, i);
  const double length = out.walls[i].length;
  std::vector<double> cuts{0, length};
  for (const Span& span : cellar) cuts.insert(cuts.end(), {span.from, span.to});
  for (const Step& step : steps) cuts.insert(cuts.end(), {step.span.from, step.span.to});
  std::sort(cuts.begin(), cuts.end());
  const size_t first = out.foundations.size();
  double from = 0;
  for (const double to : cuts) {
    if (to > length || to - from < kShortest) continue;
    // Ends a hair short of the corner are the corner.
    const double end = length - to < kShortest ? length : to;
    FoundationRun run = runAt(job, out, i, (from + end) / 2, steps, cellar);
    run.from = from;
    run.to = end;
    from = end;
    if (out.foundations.size() > first && out.foundations.back().top == run.top &&
        out.foundations.back().onCellar == run.onCellar) {
      out.foundations.back().to = end;
    } else {
      out.foundations.push_back(run);
    }
    if (end == length) break;
  }
}

// The lowest ground along a run's outer face.
double groundAlong(const SettingOut& out, const FoundationRun& run) {
  const WallLine& wall = out.walls[run.wall];
  return levelsAlong(out.terrain, wall.at(run.from), wall.at(run.to)).low;
}

// Trench fill goes down to good ground wherever it is: lengths of one top share one formation,
// under the lowest ground over them. A lower top makes the concrete shorter, not the trench deeper.
void followGoodGround(const Job& job, SettingOut& out) {
  std::map<double, double> groundOver;  // by top of concrete
  for (const FoundationRun& run : out.foundations) {
    if (run.onCellar) continue;
    const double low = groundAlong(out, run);
    const auto [found, isNew] = groundOver.emplace(run.top, low);
    if (!isNew) found->second = std::min(found->second, low);
  }
  for (FoundationRun& run : out.foundations) {
    if (run.onCellar) continue;
    run.underside = trenchFillBottom(job, groundOver.at(run.top), run.top);
    run.formation = run.underside - job.foundations.blinding;
    if (run.top == out.levels.foundationTop) out.levels.foundationFormation = run.formation;
  }
}

}  // namespace

void deriveRuns(const Job& job, SettingOut& out) {
  if (job.cellar) {
    out.cellarOutline = job.cellar->outline.empty() ? out.outline : job.cellar->outline;
    if (signedArea(out.cellarOutline) < 0) {
      std::reverse(out.cellarOutline.begin(), out.cellarOutline.end());
    }
  }
  for (size_t i = 0; i < out.walls.size(); ++i) runsOf(job, out, i);
  const Foundations& given = job.foundations;
  if (given.kind == FoundationKind::TrenchFill && !given.thickness && !given.steps.empty())
    followGoodGround(job, out);
}

}  // namespace model
