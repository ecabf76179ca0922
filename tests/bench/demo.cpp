#include "tests/bench/demo.h"

#include <fstream>
#include <sstream>
#include <stdexcept>

#include "model/job/read_job.h"
#include "tests/support/folders.h"
#include "viewer/keep_memory.h"

namespace bench {

namespace {
// As the program does; before the first benchmark.
const bool kKept = (viewer::keepFreedMemory(), true);
}  // namespace

const std::string& demoText() {
  static const std::string kText = [] {
    std::ifstream file(test_support::sourceFolder() + "/assets/jobs/orchard-house.toml");
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
  }();
  return kText;
}

const model::Job& demoJob() {
  static const model::Job kJob = [] {
    const model::ReadResult read = model::readJob(demoText(), "orchard-house.toml");
    if (!read.job) throw std::runtime_error("the demo job does not read");
    return *read.job;
  }();
  return kJob;
}

const model::Model& demo() {
  static const model::Model kModel = model::buildModel(demoJob());
  return kModel;
}

const viewer::Scene& demoScene() {
  static const viewer::Scene kScene = viewer::buildScene(demo());
  return kScene;
}

model::Model copies(int count) {
  model::Model many = demo();
  many.works.elements.clear();
  many.works.units.clear();
  many.works.frames.clear();
  many.works.elements.reserve(demo().works.elements.size() * static_cast<size_t>(count));
  for (int i = 0; i < count; ++i) {
    const model::Vec3 shift(40.0 * (i % 32), 40.0 * (i / 32), 0);
    for (model::Element element : demo().works.elements) {
      for (model::Vec3& p : element.solid.points) p += shift;
      if (i > 0) element.id += "-" + std::to_string(i);
      element.firstUnit += many.works.units.size();
      element.frame += many.works.frames.size();
      many.works.elements.push_back(std::move(element));
    }
    const model::Works& of = demo().works;
    many.works.units.insert(many.works.units.end(), of.units.begin(), of.units.end());
    for (model::UnitFrame frame : of.frames) {
      frame.start += model::Vec2(shift);
      many.works.frames.push_back(frame);
    }
  }
  return many;
}

}  // namespace bench
