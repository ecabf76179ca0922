#include "viewer/overlays/words.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

#include "model/level_text.h"
#include "model/programme/calendar.h"
#include "model/programme/date_words.h"

namespace viewer {
namespace {

constexpr double kPi = 3.14159265358979323846;

}  // namespace

int stageAt(double time, size_t stageCount) {
  return std::clamp(int(std::ceil(time - 1e-6)) - 1, 0, std::max(0, int(stageCount) - 1));
}

std::string dateWords(const std::string& iso) { return model::dateWords(iso); }

std::string isoDateAt(const model::Programme& programme, double time) {
  if (programme.stages.empty()) return {};
  const int index = stageAt(time, programme.stages.size());
  const model::Stage& stage = programme.stages[size_t(index)];
  const auto start = model::dayNumber(stage.start), finish = model::dayNumber(stage.finish);
  if (!start || !finish) return {};
  const double fraction = std::clamp(time - index, 0.0, 1.0);
  return model::isoDate(*start + std::lround(fraction * double(*finish - *start)));
}

bool isElevation(const Camera& camera) {
  return camera.parallel && std::abs(camera.elevation) < 0.002;
}

bool isPlan(const Camera& camera) { return camera.elevation > kPi / 2 - 0.02; }

std::string viewWords(const Frame& frame, const Scene& scene) {
  if (!frame.section.on) return viewWords(frame.camera);
  const glm::vec3 normal{frame.section.plane};
  const bool alongX = std::abs(normal.x) > 0.999f, alongY = std::abs(normal.y) > 0.999f;
  std::string cut;
  if (alongX || alongY) {
    // Where the plane meets the axis it stands across.
    const double local = -double(frame.section.plane.w) / double(alongX ? normal.x : normal.y);
    const double at = local + (alongX ? scene.origin.x : scene.origin.y);
    char text[32];
    std::snprintf(text, sizeof text, "%s = %.0f", alongX ? "x" : "y", at * 1000);
    cut = text;
  }
  if (std::abs(normal.z) > 0.999f)
    cut = "level " + model::levelText(-double(frame.section.plane.w) / double(normal.z));
  const glm::dvec2 looking{std::sin(frame.camera.azimuth), std::cos(frame.camera.azimuth)};
  const double square = -(looking.x * double(normal.x) + looking.y * double(normal.y));
  if (!isElevation(frame.camera) || square < 0.999)
    return viewWords(frame.camera) + (cut.empty() ? ", cut" : ", cut at " + cut);
  constexpr std::array<const char*, 4> kTowards{"north", "east", "south", "west"};
  const long quarter = std::lround(frame.camera.azimuth / (kPi / 2));
  if (cut.empty()) return "Section, looking " + std::string(kTowards[size_t(quarter & 3)]);
  return "Section at " + cut + ", looking " + kTowards[size_t(quarter & 3)];
}

std::string viewWords(const Camera& camera) {
  const char* kind = camera.parallel ? "parallel" : "perspective";
  if (isPlan(camera)) return std::string("Plan, ") + kind;
  // The camera looks along its azimuth, so it stands on the opposite side.
  constexpr std::array<const char*, 8> kSides{"south", "south-west", "west", "north-west",
                                              "north", "north-east", "east", "south-east"};
  const double eighth = camera.azimuth / (kPi / 4);
  const long side = ((std::lround(eighth) % 8) + 8) % 8;
  if (isElevation(camera) && std::abs(eighth - double(std::lround(eighth))) < 0.01 &&
      side % 2 == 0) {
    std::string words = kSides[size_t(side)];
    words[0] = char(words[0] - 'a' + 'A');
    return words + " elevation";
  }
  return std::string("From the ") + kSides[size_t(side)] + ", " + kind;
}

std::string stringGroupName(const std::vector<std::string>& names) {
  if (names.empty()) return {};
  const size_t space = names.front().find(' ');
  if (names.size() == 1 || space == std::string::npos) return names.front();
  const auto edge = [](const std::string& what) {
    return what == "foundation outer edge" || what == "foundation inner edge";
  };
  std::vector<std::string> parts;
  for (const std::string& name : names)
    parts.push_back(name.substr(std::min(space + 1, name.size())));
  // Both edges of the foundation are one matter, said last.
  const auto edges = std::stable_partition(parts.begin(), parts.end(),
                                           [&](const std::string& part) { return !edge(part); });
  if (parts.end() - edges == 2) {
    parts.erase(edges, parts.end());
    parts.emplace_back("foundation edges");
  }
  std::string text = names.front().substr(0, space) + ":";
  for (size_t i = 0; i < parts.size(); ++i) text += (i ? ", " : " ") + parts[i];
  return text;
}

std::string courseWords(const model::Model& model, double level) {
  const double course = (level - model.settingOut.levels.dampCourse) / model.job.walls.course();
  const double whole = std::round(course);
  char text[32];
  if (std::abs(course - whole) * model.job.walls.course() < 0.001)
    std::snprintf(text, sizeof text, "course %d", int(whole));
  else
    std::snprintf(text, sizeof text, "course %.1f", course);
  return text;
}

}  // namespace viewer
