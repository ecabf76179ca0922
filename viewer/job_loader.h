// Reads a job and makes it ready to draw, away from the window's own thread.
#pragma once

#include <future>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "model/asbuilt/as_built.h"
#include "model/job/read_job.h"
#include "model/lines/set_out_lines.h"
#include "model/model.h"
#include "model/problems.h"
#include "viewer/overlays/job_facts.h"
#include "viewer/picking.h"
#include "viewer/scene.h"
#include "viewer/stage_views_beside.h"

namespace viewer {

// A model with all that is drawn of it. Never moved: its parts point to one another.
struct ReadyJob {
  // Counts the model too: `from` needs no takeoff.
  explicit ReadyJob(model::Model from, model::KeyPlaces given = {});
  model::Model model;
  model::SetOutLines setOut;  // what is set out and checked by tape
  model::AsBuilt asBuilt;     // what was read, against what is drawn
  JobFacts facts;             // what else overlays tell
  model::KeyPlaces places;    // where the file gives what it gives
  Scene scene;
  Picker picker;
  StageViewsBeside views;

 private:
  Scene sceneAndFacts();
};

struct JobResult {
  std::unique_ptr<ReadyJob> job;  // only when the file has no error
  model::Problems problems;
  std::vector<std::string> files;  // as LoadedJob::files
};

class JobLoader {
 public:
  explicit JobLoader(std::string path) : path_(std::move(path)) {}
  // Starts to read; when it is reading already, again as soon as that is done.
  void start(double now);
  bool busy() const { return pending_.valid(); }
  // True when it has taken so long that the user should be told.
  bool slow(double now) const { return busy() && now - started_ > 0.1; }
  // What came of it, once.
  std::optional<JobResult> take(double now);

 private:
  std::string path_;
  std::future<JobResult> pending_;
  double started_ = 0;
  bool again_ = false;
};

}  // namespace viewer
