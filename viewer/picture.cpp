#include "viewer/picture.h"

#include <algorithm>
#include <cmath>

#include "viewer/gl/picture_ink.h"
#include "viewer/gl/renderer.h"
#include "viewer/job_words.h"
#include "viewer/overlays/overlay_sheet.h"
#include "viewer/picking.h"
#include "viewer/scene.h"
#include "viewer/section.h"
#include "viewer/stage_views_beside.h"
#include "viewer/sun.h"
#include "viewer/view_state.h"

namespace viewer {

namespace {

constexpr double kHour = 10.0;  // mid-morning: raking light that still reaches the south walls

// Lettering grows with the picture, in quarters, so that a large one reads like a small one; on a
// small one it shrinks a little, so that the drawing keeps its room, and on a thumbnail with it.
float letteringScale(int width, int height) {
  const double by = std::min(width / 1280.0, height / 720.0);
  const double thumbnail = std::clamp(std::min(width / 800.0, height / 500.0), 0.5, 1.0);
  if (by < 1) return static_cast<float>(std::min(thumbnail, std::clamp(by * 1.25, 0.8, 1.0)));
  return static_cast<float>(std::min(std::floor(by * 4) / 4, 4.0));
}

float letteringScale(const PictureOptions& options) {
  return options.lettering > 0 ? options.lettering : letteringScale(options.width, options.height);
}

bool any(const Overlays& o) {
  return o.levels || o.lines || o.corners || o.dimensions || o.captions || o.titleBlock || o.tape ||
         o.rod || o.settingOut || o.instrument || o.readings || o.gaugeRods || o.cutUnits ||
         o.clientWords;
}

int stageAt(const model::Model& model, double time) {
  const double last = std::max(0.0, double(model.programme.stages.size()) - 1);
  return static_cast<int>(std::clamp(std::ceil(time) - 1, 0.0, last));
}

}  // namespace

SheetLayout sheetOf(const model::Model& model, const PictureOptions& options) {
  std::optional<size_t> stage;  // whose words stand on it
  if (options.own) stage = static_cast<size_t>(stageAt(model, options.time));
  return sheetOf(model, options.overlays, static_cast<float>(options.width),
                 static_cast<float>(options.height), letteringScale(options), 0, stage);
}

Frame frameOf(const model::Model& model, const Scene& scene, const PictureOptions& options) {
  Frame frame = options.frame;
  frame.time = options.time;
  frame.markCuts = options.overlays.cutUnits;
  frame.stage = stageAt(model, options.time);
  const double aspect = static_cast<double>(options.width) / options.height;
  // A plan shows the site; everything else the building.
  const bool plan = options.view == "plan";
  const glm::vec3& low = plan ? scene.low : scene.buildingLow;
  const glm::vec3& high = plan ? scene.high : scene.buildingHigh;
  const std::string view =
      standardView(options.view, low, high, aspect) ? options.view : "south-west";
  frame.camera = *standardView(view, low, high, aspect);
  if (options.own && !frame.section.on) frame.section = options.own->section;
  if (options.own && options.own->seeThrough != SeeThrough::Nothing)
    frame.seeThrough = options.own->seeThrough;
  if (options.camera) {
    frame.camera = *options.camera;
  } else if (any(options.overlays)) {  // with a sheet round it, in what that leaves free
    const SheetLayout layout = sheetOf(model, options);
    frame.camera = options.own
                       ? cameraOf(*options.own, layout)
                       : *fittedView(view, scene, layout,
                                     frame.section.on || frame.seeThrough != SeeThrough::Nothing);
  } else if (options.own) {
    const float width = static_cast<float>(options.width),
                height = static_cast<float>(options.height);
    SheetLayout bare;
    bare.sheet = {0, 0, width, height};
    bare.drawing = bare.sheet.grown(-0.04f * height);
    frame.camera = cameraOf(*options.own, bare);
  }
  frame.sun = sunDirection(model.job.site.latitude, dayOfYear(model.job.programme.start.c_str()),
                           kHour, model.job.site.northBearing);
  if (options.view == "section" && !options.own && !frame.section.on)
    frame.section = standardSection(model, scene);
  return frame;
}

struct Picturer::Impl {
  const model::Model& model;
  Offscreen& offscreen;
  Scene scene;
  Renderer renderer;
  std::unique_ptr<Picker> picker;   // made when first asked for
  std::unique_ptr<PictureInk> ink;  // made with the first overlay
  std::optional<model::SetOutLines> setOut;
  std::optional<model::AsBuilt> asBuilt;
  std::optional<JobFacts> facts;
  std::optional<StageViewsBeside> views;

  const Picker& pick() {
    if (!picker) picker = std::make_unique<Picker>(scene);
    return *picker;
  }
  void layOverlays(const Frame& frame, const PictureOptions& options);
};

void Picturer::Impl::layOverlays(const Frame& frame, const PictureOptions& options) {
  if (!any(options.overlays)) return;
  const float scale = letteringScale(options);
  if (!ink || ink->scale() != scale) {
    ink.reset();
    ink = std::make_unique<PictureInk>(scale, jobWords(model));
  }
  pick();
  if (!setOut) {
    setOut = model::deriveLines(model.job, model.settingOut);
    asBuilt = model::deriveAsBuilt(model.job, model.settingOut);
    facts = deriveJobFacts(model, *asBuilt);
  }
  OverlayOptions how;
  how.picker = picker.get();
  how.setOut = &*setOut;
  how.asBuilt = &*asBuilt;
  how.facts = &*facts;
  how.standing = options.standing;
  how.roomByStage = options.own.has_value();
  ink->lay(options.width, options.height, [&] {
    drawOverlays(model, scene, frame, options.overlays, options.width, options.height, how);
  });
}

Picturer::Picturer(const model::Model& model, Offscreen& offscreen)
    : impl_(new Impl{model, offscreen, buildScene(model), {}, {}, {}, {}, {}, {}, {}}) {
  impl_->renderer.setScene(impl_->scene);
}

Picturer::~Picturer() = default;

std::optional<model::Problem> Picturer::lackingLetters() const {
  return impl_->ink ? impl_->ink->lacking() : std::nullopt;
}

const Scene& Picturer::scene() const { return impl_->scene; }

const StageView& Picturer::viewOf(size_t stage) {
  if (!impl_->views) impl_->views.emplace(impl_->model, impl_->scene, impl_->pick());
  return *impl_->views->waitFor(static_cast<int>(stage));
}

Image Picturer::picture(const PictureOptions& options) {
  const Frame frame = frameOf(impl_->model, impl_->scene, options);
  // The renderer takes its own samples; overlays are laid over the finished picture.
  impl_->offscreen.begin(options.width, options.height, 1);
  impl_->renderer.draw(frame, options.width, options.height);
  impl_->layOverlays(frame, options);
  return impl_->offscreen.read();
}

Image renderPicture(const model::Model& model, Offscreen& offscreen,
                    const PictureOptions& options) {
  return Picturer(model, offscreen).picture(options);
}

}  // namespace viewer
