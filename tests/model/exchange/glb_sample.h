// A model of a few boxes with every kind of coming and going, and the demo jobs.
#pragma once

#include <gtest/gtest.h>

#include <filesystem>

#include "model/job/read_job.h"
#include "model/model.h"
#include "tests/support/folders.h"

namespace model::testing {

inline Element boxElement(const std::string& id, const Vec3& low, const Vec3& high,
                          Placement placed, std::optional<Placement> removed = {}) {
  Element element;
  element.id = id;
  element.name = "Box " + id;
  element.kind = ElementKind::Foundation;
  element.material = Material::Concrete;
  element.solid = box(low, high);
  element.quantity = {volume(element.solid), Unit::CubicMetre};
  element.placed = placed;
  element.removed = removed;
  element.underside = low.z;
  element.top = high.z;
  return element;
}

// Two stages; things that stay, that are removed, that come and go, and a string.
inline Model sampleModel() {
  const StageKey dig{StageKind::TrenchDig, 0, 0}, pour{StageKind::FoundationPour, 0, 0};
  Model m;
  m.job.name = "Sample";
  m.settingOut.outline = {{10, 20}, {14, 20}, {14, 22}, {10, 22}};
  for (const auto& [key, id, name] :
       {std::tuple{dig, "dig-trenches", "Dig the trenches"},
        std::tuple{pour, "pour-foundations", "Pour the foundations"}}) {
    Stage stage;
    stage.key = key;
    stage.id = id;
    stage.name = name;
    m.programme.stages.push_back(stage);
  }
  auto& elements = m.works.elements;
  elements.push_back(boxElement("ground", {8, 18, -2}, {16, 24, -1}, whole({})));
  elements.push_back(boxElement("spoil", {10, 20, -1}, {14, 22, 0}, whole({}), whole(dig)));
  elements.push_back(boxElement("prop", {10, 20, -1}, {10.1, 20.1, 0}, whole(dig), whole(pour)));
  elements.push_back(boxElement("strip", {10, 20, -1}, {14, 22, -0.5}, whole(pour)));
  m.works.strings.push_back({"A-B outer face", {10, 20, 0.2}, {14, 20, 0.2}, whole(dig), {}});
  return m;
}

// The demo jobs, by file name.
inline std::vector<std::string> demoJobs() {
  std::vector<std::string> names;
  for (const auto& file :
       std::filesystem::directory_iterator(test_support::sourceFolder() + "/assets/jobs")) {
    if (file.path().extension() == ".toml") names.push_back(file.path().filename());
  }
  std::sort(names.begin(), names.end());
  return names;
}

inline Model demoModel(const std::string& name) {
  const ReadResult read = readJobFile(test_support::sourceFolder() + "/assets/jobs/" + name);
  if (!read.job) throw std::runtime_error(name + " does not read");
  return buildModel(*read.job);
}

}  // namespace model::testing
