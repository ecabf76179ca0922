#include "viewer/picture.h"

#include <algorithm>
#include <cmath>

#include "viewer/gl/renderer.h"
#include "viewer/scene.h"
#include "viewer/section.h"
#include "viewer/sun.h"

namespace viewer {

namespace {

constexpr double kHour = 10.0;  // mid-morning: raking light that still reaches the south walls

}  // namespace

Frame frameOf(const model::Model& model, const Scene& scene, const PictureOptions& options) {
  Frame frame = options.frame;
  frame.time = options.time;
  const double last = std::max(0.0, scene.stageCount - 1);
  frame.stage = static_cast<int>(std::clamp(std::ceil(options.time) - 1, 0.0, last));
  const double aspect = static_cast<double>(options.width) / options.height;
  // A plan shows the site; everything else the building.
  const bool plan = options.view == "plan";
  const glm::vec3& low = plan ? scene.low : scene.buildingLow;
  const glm::vec3& high = plan ? scene.high : scene.buildingHigh;
  const auto camera = standardView(options.view, low, high, aspect);
  frame.camera = camera ? *camera : *standardView("south-west", low, high, aspect);
  frame.sun = sunDirection(model.job.site.latitude, dayOfYear(model.job.programme.start.c_str()),
                           kHour, model.job.site.northBearing);
  if (options.view == "section" && !frame.section.on)
    frame.section = standardSection(scene.buildingLow, scene.buildingHigh);
  return frame;
}

struct Picturer::Impl {
  const model::Model& model;
  Offscreen& offscreen;
  Scene scene;
  Renderer renderer;
};

Picturer::Picturer(const model::Model& model, Offscreen& offscreen)
    : impl_(new Impl{model, offscreen, buildScene(model), {}}) {
  impl_->renderer.setScene(impl_->scene);
}

Picturer::~Picturer() = default;

const Scene& Picturer::scene() const { return impl_->scene; }

Image Picturer::picture(const PictureOptions& options) {
  const Frame frame = frameOf(impl_->model, impl_->scene, options);
  // The renderer takes its own samples; overlays are laid over the finished picture.
  impl_->offscreen.begin(options.width, options.height, 1);
  impl_->renderer.draw(frame, options.width, options.height);
  return impl_->offscreen.read();
}

Image renderPicture(const model::Model& model, Offscreen& offscreen,
                    const PictureOptions& options) {
  return Picturer(model, offscreen).picture(options);
}

}  // namespace viewer
