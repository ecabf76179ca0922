// Jobs that booklets have a hard time with.
#pragma once

#include <string>

#include "model/drawing/crew_brief.h"
#include "model/model.h"
#include "tests/model/drawing/tidy_drawing.h"

namespace test_support {

inline Job boxJob() {
  Job job;
  job.outline = {{0, 0}, {6.74, 0}, {6.74, 4.49}, {0, 4.49}};
  job.programme.start = "2027-03-01";
  return job;
}

// Names, notes and hold points far longer than there is room for, in several scripts, one of them a
// single word.
inline Job longWindedJob() {
  Job job = boxJob();
  const std::string word =
      "Donaudampfschifffahrtselektrizit\u00e4tenhauptbetriebswerkbauunterbeamtengesellschaft";
  std::string prose;
  for (int i = 0; i < 60; ++i)
    prose +=
        "\u0441\u0442\u043e\u0440\u043e\u0436\u043a\u0430 \u6771\u4eac\u306e\u77f3\u5de5\u4e8b " +
        word + " ";
  job.name = word + word + " " + prose;
  job.drawing = word + " " + word;
  job.storeys[0].name = word + " " + word;
  job.site.benchMark = BenchMark{};
  job.site.benchMark->name = word + " " + word;
  SetUp setUp;
  setUp.name = word;
  setUp.backsight = 1.4;
  job.setUps = {setUp, setUp};
  job.setUps[1].name = word + " 2";
  for (const char* stage : {"dig-trenches", "damp-course", "run-in-*", "completion"}) {
    StageOverride other;
    other.stage = stage;
    other.name = word + word + " " + stage;
    other.crew = prose;
    other.holdPoint = prose;
    other.note = prose;
    other.notice = prose;
    other.decision = prose;
    job.programme.stages.push_back(other);
  }
  Delivery delivery;
  delivery.what = prose;
  delivery.stage = "damp-course";
  job.programme.deliveries.push_back(delivery);
  return job;
}

// As many stages as that, most of them the job's own.
inline Job manyStagesJob(size_t count) {
  Job job = boxJob();
  const size_t usual = buildModel(job).programme.stages.size();
  for (size_t i = usual; i < count; ++i) {
    OwnStage own;
    own.name = "Own work " + std::to_string(i);
    own.follows = "set-out";
    job.programme.ownStages.push_back(own);
  }
  return job;
}

inline Job namelessJob() {
  Job job = boxJob();
  job.name = "";
  job.datumNote = "";
  job.storeys[0].name = "";
  job.programme.start = "";
  return job;
}

// All words of a sheet, in their order, with single spaces: what was wrapped is whole again.
inline std::string wordsOf(const Sheet& sheet) {
  std::string words;
  for (const Text& text : sheet.texts) words += text.text + " ";
  return words;
}

// The page of a stage, by the number in its head; null when there is none.
inline const Sheet* pageOf(const Drawing& drawing, const Model& model, size_t stage) {
  const std::string head =
      "Stage " + std::to_string(stage + 1) + " of " + std::to_string(model.programme.stages.size());
  for (const Sheet& sheet : drawing.sheets)
    if (says(sheet, head)) return &sheet;
  return nullptr;
}

// A picture that no writer looks into.
inline StagePictures anyPictures(const Model& model, int width, int height) {
  return StagePictures(model.programme.stages.size(), Jpeg{"bytes", width, height});
}

}  // namespace test_support
