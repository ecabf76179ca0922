// A picture of one moment from one place, with overlays, as `picture` and the stage pictures make.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "model/model.h"
#include "model/problems.h"
#include "viewer/frame.h"
#include "viewer/gl/offscreen.h"
#include "viewer/stage_view.h"

namespace viewer {

struct Scene;
struct SheetLayout;

// What may be laid over the building; each can be switched on its own.
struct Overlays {
  bool levels = false;      // level marks with values
  bool lines = false;       // string lines and profiles
  bool corners = false;     // corner letters
  bool dimensions = false;  // wall lengths, offsets to boundary and existing building
  bool captions = false;    // stage name, what is done, caution, hold point
  bool titleBlock = false;
  bool tape = false;
  bool rod = false;
  bool settingOut = false;   // boards' marks, diagonals, triangles, offset lines, limits
  bool readings = false;     // what was read, against what is drawn
  bool instrument = false;   // set-ups of the level, and the sight of the one read from
  bool gaugeRods = false;    // the gauge rod beside every corner
  bool clientWords = false;  // the stage in large plain words, for a client
  bool cutUnits = false;     // bricks and blocks that are not whole, marked and counted
};

struct PictureOptions {
  int width = 1280, height = 720;
  double time = 0;
  std::string view = "south-west";  // of standardViewNames(); unknown: as south-west
  std::optional<Camera> camera;     // in place of that view's
  std::optional<StageView> own;     // in its place: a stage's own, with its cut and its ground
  Overlays overlays;
  float lettering = 0;                   // scale of the overlays' letters; 0: what suits the size
  std::optional<model::SetUp> standing;  // the set-up that levels are read from
  Frame frame;  // camera, time, stage and sun are set from the above and from the job
};

// The frame of those options: camera, clock, sun and, for the view "section", the section.
Frame frameOf(const model::Model& model, const Scene& scene, const PictureOptions& options);

// Where the overlays of those options stand, and what they leave for the building.
SheetLayout sheetOf(const model::Model& model, const PictureOptions& options);

// Makes any number of pictures of one model; the buffers and shaders are made once. The context
// must stay current and the model must stay alive.
class Picturer {
 public:
  Picturer(const model::Model& model, Offscreen& offscreen);
  ~Picturer();
  Image picture(const PictureOptions& options);
  const Scene& scene() const;
  // A stage's own view. They are chosen from the first stage on, beside what is drawn, once one has
  // been asked for. `stage` is an index into the programme.
  const StageView& viewOf(size_t stage);
  // A warning, without a file, when letters of the job were lacking in the pictures made so far.
  std::optional<model::Problem> lackingLetters() const;

 private:
  struct Impl;
  std::unique_ptr<Impl> impl_;
};

// One picture, with a context that is current already. Deterministic for one driver.
Image renderPicture(const model::Model& model, Offscreen& offscreen, const PictureOptions& options);

// PNG bytes, through libpng.
std::string pngBytes(const Image& image);

}  // namespace viewer
