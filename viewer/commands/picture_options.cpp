#include "viewer/commands/picture_options.h"

#include <charconv>
#include <cmath>
#include <cstdio>
#include <sstream>

#include "model/job/lengths.h"
#include "model/levelling/level_book.h"
#include "viewer/camera.h"
#include "viewer/read_level.h"
#include "viewer/scene.h"
#include "viewer/section.h"
#include "viewer/standing.h"

namespace viewer {
namespace {

constexpr int kLeastSize = 64;
constexpr int kMostSize = 8192;

struct NamedOverlay {
  const char* name;
  bool Overlays::*flag;
};
constexpr NamedOverlay kOverlays[] = {
    {"levels", &Overlays::levels},
    {"lines", &Overlays::lines},
    {"corners", &Overlays::corners},
    {"dimensions", &Overlays::dimensions},
    {"caption", &Overlays::captions},
    {"title", &Overlays::titleBlock},
    {"tape", &Overlays::tape},
    {"rod", &Overlays::rod},
    {"setting-out", &Overlays::settingOut},
    {"instrument", &Overlays::instrument},
    {"readings", &Overlays::readings},
    {"gauge-rods", &Overlays::gaugeRods},
    {"cut-units", &Overlays::cutUnits},
    {"client-words", &Overlays::clientWords},
};

template <typename Number>
std::optional<Number> wholly(std::string_view text) {
  Number value{};
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc() || end != text.data() + text.size()) return std::nullopt;
  return value;
}

std::string range(const char* axis, double low, double high) {
  char text[64];
  std::snprintf(text, sizeof text, "%s=%.0f to %s=%.0f", axis, low * 1000, axis, high * 1000);
  return text;
}

// A place on the drawing: millimetres, or a length with its unit. Metres.
std::optional<double> readPlace(std::string_view text) {
  const auto millimetres = wholly<double>(text);
  if (!millimetres) return model::readLength(text).value;
  if (!std::isfinite(*millimetres)) return std::nullopt;
  return model::fromMillimetres(*millimetres);
}

std::optional<std::string> cutsNothing(const SectionWish& wish, const Scene& scene) {
  if (!wish.at) return std::nullopt;
  const char* axis = wish.alongX ? "x" : "y";
  const auto along = [&](const glm::vec3& p) {
    return wish.alongX ? scene.world(p).x : scene.world(p).y;
  };
  if (*wish.at > along(scene.low) && *wish.at < along(scene.high)) return std::nullopt;
  return "--section there cuts nothing; the site lies from " +
         range(axis, along(scene.low), along(scene.high)) + ", the building from " +
         range(axis, along(scene.buildingLow), along(scene.buildingHigh));
}

}  // namespace

std::string overlayNames() {
  std::string names;
  for (const NamedOverlay& overlay : kOverlays) names += std::string(overlay.name) + ", ";
  return names + "all, none";
}

std::string viewNames() {
  std::string names;
  for (const std::string& name : standardViewNames()) {
    names += (names.empty() ? "" : ", ") + name;
  }
  return names + ", " + kStageView;
}

std::optional<std::string> readSize(const std::string& text, PictureOptions& picture) {
  const size_t by = text.find('x');
  if (by != std::string::npos) {
    const auto width = wholly<int>(std::string_view(text).substr(0, by));
    const auto height = wholly<int>(std::string_view(text).substr(by + 1));
    const auto fits = [](int n) { return n >= kLeastSize && n <= kMostSize; };
    if (width && height && fits(*width) && fits(*height)) {
      picture.width = *width;
      picture.height = *height;
      return std::nullopt;
    }
  }
  return "--size \"" + text + "\" is not a size; write WIDTHxHEIGHT such as 1280x720, each " +
         std::to_string(kLeastSize) + " to " + std::to_string(kMostSize);
}

std::optional<std::string> readOverlays(const std::string& text, Overlays& overlays) {
  std::istringstream list(text);
  for (std::string name; std::getline(list, name, ',');) {
    if (name == "none" && text != "none")
      return "--show \"" + text + "\": none goes alone; leave it out to show the others";
    bool known = name.empty() || name == "none";
    for (const NamedOverlay& overlay : kOverlays) {
      if (name != overlay.name && name != "all") continue;
      overlays.*overlay.flag = true;
      known = true;
    }
    if (!known) return "--show knows no \"" + name + "\"; there are " + overlayNames();
  }
  return std::nullopt;
}

std::optional<std::string> readView(const std::string& text, PictureOptions& picture) {
  for (const std::string& name : standardViewNames()) {
    if (name != text) continue;
    picture.view = text;
    return std::nullopt;
  }
  if (text == kStageView) {
    picture.view = text;
    return std::nullopt;
  }
  return "there is no view \"" + text + "\"; there are " + viewNames();
}

std::optional<std::string> readMoment(const std::string& stage, double fraction,
                                      const model::Programme& programme, PictureOptions& picture) {
  if (!(fraction >= 0 && fraction <= 1)) return "--at runs from 0 to 1, the whole of the stage";
  if (programme.stages.empty()) return std::nullopt;
  const auto index = stage.empty() ? programme.stages.size() - 1 : programme.find(stage);
  if (!index) {
    std::string message = "there is no one stage \"" + stage + "\"; there are:";
    for (size_t i = 0; i < programme.stages.size(); ++i) {
      message += "\n  " + std::to_string(i + 1) + "  " + programme.stages[i].id;
    }
    return message;
  }
  picture.time = static_cast<double>(*index) + fraction;
  return std::nullopt;
}

std::optional<std::string> readSection(const std::string& text, SectionWish& wish) {
  struct Side {
    const char* name;
    bool alongX;
    int remove;
  };
  for (const Side& side : {Side{"north", false, 1}, Side{"south", false, -1}, Side{"east", true, 1},
                           Side{"west", true, -1}}) {
    if (text != side.name) continue;
    wish = {side.alongX, std::nullopt, side.remove};
    return std::nullopt;
  }
  if (text.size() > 2 && (text[0] == 'x' || text[0] == 'y') && text[1] == '=') {
    if (const auto at = readPlace(std::string_view(text).substr(2))) {
      wish = {text[0] == 'x', *at, std::nullopt};
      return std::nullopt;
    }
  }
  return "--section \"" + text +
         "\" is no place to cut; write north, south, east or west for the side to take away, or "
         "x=3500 or y=2000 in mm on the drawing";
}

std::optional<std::string> applySection(const SectionWish& wish, const model::Model& model,
                                        const Scene& scene, PictureOptions& picture) {
  const Across across = wish.alongX ? Across::X : Across::Y;
  const double at = wish.at ? *wish.at : tellingCut(model, across);
  if (auto wrong = cutsNothing(wish, scene)) return wrong;
  int remove = wish.remove.value_or(-1);
  if (picture.view == "section") {
    // A section is looked at squarely, from the side that is taken away.
    if (wish.alongX) picture.view = remove > 0 ? "east" : "west";
    if (!wish.alongX) picture.view = remove > 0 ? "north" : "south";
  } else if (!wish.remove) {
    const model::Vec3 eye = scene.world(frameOf(model, scene, picture).camera.eye());
    remove = (wish.alongX ? eye.x : eye.y) < at ? -1 : 1;
  }
  picture.frame.section = sectionAt(scene, across, at, remove);
  return std::nullopt;
}

std::optional<std::string> readLevelPlane(const std::string& text,
                                          const model::SettingOut& settingOut,
                                          PictureOptions& picture) {
  const auto read = readLevel(text, settingOut);
  if (const auto* wrong = std::get_if<NoLevel>(&read)) return "--level: " + wrong->why;
  picture.frame.levelPlane = true;
  picture.frame.levelPlaneAt = static_cast<float>(std::get<double>(read));
  picture.overlays.rod = true;
  return std::nullopt;
}

std::optional<std::string> readSetUp(const std::string& text, const model::Job& job,
                                     PictureOptions& picture) {
  std::string names;
  for (const model::SetUp& setUp : job.setUps) {
    names += (names.empty() ? "" : ", ") + setUp.name;
    if (!model::sameName(setUp.name, text)) continue;
    picture.standing = setUp;
    picture.overlays.instrument = true;
    // The plane of its line, unless another level has been asked for.
    const auto instrument = instrumentOf(job, setUp);
    if (instrument && !picture.frame.levelPlane) {
      picture.frame.levelPlane = picture.overlays.rod = true;
      picture.frame.levelPlaneAt = static_cast<float>(instrument->collimation);
    }
    return std::nullopt;
  }
  if (names.empty()) return "--set-up \"" + text + "\": the job has no set-ups";
  return "--set-up knows no \"" + text + "\"; there are " + names;
}

}  // namespace viewer
