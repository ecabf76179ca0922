// Everything that is laid over the building: the same for the window and for pictures.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/asbuilt/as_built.h"
#include "model/lines/set_out_lines.h"
#include "model/model.h"
#include "viewer/frame.h"
#include "viewer/picking.h"
#include "viewer/picture.h"
#include "viewer/playback.h"
#include "viewer/scene.h"

struct ImDrawList;

namespace viewer {

struct DrawnText;
struct JobFacts;

struct OverlayOptions {
  const Picker* picker = nullptr;    // tells what is hidden; without one a coarser rule does
  ImDrawList* list = nullptr;        // null: the background list of the current Dear ImGui frame
  std::optional<glm::vec2> pointer;  // where the mouse is, for what the tape says under it
  // The instrument that is read from; then rod and levels show staff readings.
  std::optional<model::SetUp> standing;
  const model::SetOutLines* setOut = nullptr;  // null: worked out when it is to be shown
  const model::AsBuilt* asBuilt = nullptr;     // the same, of readings
  const JobFacts* facts = nullptr;             // the same, of the rest
  std::optional<size_t> readingSet;            // of Job::readings; else the latest of every point
  bool roomByStage = false;       // the drawing has what the words of this one stage leave
  float pulledOut = 0;            // pixels that a sheet of the window stands in from the left
  bool viewIsButton = false;      // the title block shows that its view can be clicked
  bool fieldsAreButtons = false;  // and that job, datum and bench mark can be typed into
  std::optional<Pace> pace;       // the tape shows it and that it can be clicked; nothing elsewhere
  bool waits = false;             // days are passing on which nothing is done
  // The piece that has just come or gone, and which of how many; empty unless pieces are looked at.
  std::string piece, pieceCount;
  std::vector<DrawnText>* record = nullptr;  // takes down every text and where it stands
};

// Issues draw calls into the current Dear ImGui frame, whose lettering is loadLettering's.
// `width` and `height` are the frame's.
void drawOverlays(const model::Model& model, const Scene& scene, const Frame& frame,
                  const Overlays& overlays, int width, int height,
                  const OverlayOptions& options = {});

}  // namespace viewer
