// Reading what the command line says about a picture. Each returns nothing, or a message that says
// what there is instead.
#pragma once

#include <optional>
#include <string>

#include "viewer/picture.h"

namespace viewer {

// The name of the view that is each stage's own.
inline constexpr const char* kStageView = "stage";

// "1280x720".
std::optional<std::string> readSize(const std::string& text, PictureOptions& picture);
// "levels,lines": see overlayNames().
std::optional<std::string> readOverlays(const std::string& text, Overlays& overlays);
// One of standardViewNames(), or kStageView.
std::optional<std::string> readView(const std::string& text, PictureOptions& picture);
// A stage by id, number or name, and how far into it (0..1).
std::optional<std::string> readMoment(const std::string& stage, double fraction,
                                      const model::Programme& programme, PictureOptions& picture);

// Where to cut: "north" (that side of where the cut tells most is taken away) or "x=3500", "y=2 m"
// (on the drawing, mm without a unit; the side nearer to the eye is taken away).
struct SectionWish {
  bool alongX = true;         // the plane stands at an x, else at a y
  std::optional<double> at;   // nothing: tellingCut()
  std::optional<int> remove;  // +1 the greater side, -1 the lesser; nothing: the eye's side
};
std::optional<std::string> readSection(const std::string& text, SectionWish& wish);
// Puts the wish into the frame of the picture, and turns its view "section" square to it; a place
// that cuts nothing is refused.
std::optional<std::string> applySection(const SectionWish& wish, const model::Model& model,
                                        const Scene& scene, PictureOptions& picture);

// The level plane, in metres or by a scheduled level's name; it brings the rod, which says its
// level.
std::optional<std::string> readLevelPlane(const std::string& text,
                                          const model::SettingOut& settingOut,
                                          PictureOptions& picture);

// The set-up whose staff readings are shown, by name; it brings the instrument, the rod and, where
// no level plane is asked for, the plane of its line.
std::optional<std::string> readSetUp(const std::string& text, const model::Job& job,
                                     PictureOptions& picture);

std::string overlayNames();  // "levels, lines, ..."
std::string viewNames();

}  // namespace viewer
