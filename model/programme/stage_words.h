// What is said about each stage: to the client in plain words, to the crew with the numbers, and
// nothing that is not so on this job.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"
#include "model/works/element.h"

namespace model {

// What a job has of the things that stages are done differently for.
struct StageTraits {
  bool beamFloor = false;     // the ground floor is beams and blocks over a void
  bool slopedDig = false;     // the sides of the cellar's dig lean back, and nothing holds them
  bool blinding = false;      // under the foundations
  bool besideCellar = false;  // lean concrete carries foundations over the cellar's dig
  CellarWallKind cellarWalls = CellarWallKind::Concrete;
  bool scaffold = false;                // before the walls are finished
  std::vector<StageKey> scaffoldLifts;  // platforms that are put up for walls, lowest first
  // What has to be looked out for on this job only, in whole sentences.
  std::map<StageKind, std::string> alsoMind;
  std::string alsoMindOnWalls;        // the same for walls that are out of reach of the ground
  std::optional<StageKey> highWalls;  // the first lift that is
  std::map<StageKey, std::string> alsoMindIn;  // the same for one stage
  std::map<StageKey, std::string> wells;       // of stages that leave a stairwell in a floor
};
StageTraits traitsOf(const Job& job, const SettingOut& settingOut, const Works& works);

// The words for one kind of stage. In the last three, "{...}" stands for a number, or for words,
// of this job; see StageFacts.
struct StageWords {
  StageKind kind;
  const char* id;
  const char* name;
  const char* what;
  const char* atEnd;
};

// The words for a kind of stage; every kind but Existing has some. The id is the kind's alone.
const StageWords& wordsFor(StageKind kind, const StageTraits& traits = {});

// Fills in what is to be minded on this job only.
void addOwnCautions(const Job& job, const SettingOut& settingOut, StageTraits& traits);
// The stages that put up platforms for walls, lowest first.
std::vector<StageKey> scaffoldLifts(const Works& works);

// What to look out for, ending in deference to those who are competent; empty when none is due.
std::string cautionFor(const StageKey& key, const StageTraits& traits = {});
// Who usually looks at what before work goes on; empty when nobody does.
std::string holdPointFor(StageKind kind, const StageTraits& traits = {});

// Names of the storeys as ids may carry them: lower case, no spaces, no two alike. "Ground floor"
// gives "ground"; a name with letters beyond a to z goes by its number, "storey-2".
std::vector<std::string> storeySlugs(const std::vector<Storey>& storeys);

// This job's numbers and words for every "{...}". The three must outlive it.
class StageFacts {
 public:
  StageFacts(const Job& job, const SettingOut& settingOut, const Works& works);
  // The text with every "{...}" replaced, for this stage. Throws for one that there is not.
  std::string fill(const char* text, const StageKey& key) const;

 private:
  std::string factOf(const std::string& name, const StageKey& key) const;
  std::string asTheyRise(const StageKey& key) const;

  const Job& job_;
  const SettingOut& settingOut_;
  std::map<std::string, std::string> facts_;         // of the whole job
  std::map<StageKey, std::vector<double>> lintels_;  // undersides, by the stage that beds them
  std::vector<StageKey> scaffoldLifts_;
  std::map<StageKey, std::string> joined_;  // to old walls
  // Stages with cavity barriers, trays over level ones, movement joints, steps of the damp course.
  std::set<StageKey> barriers_, longTrays_, joints_, steps_;
};

}  // namespace model
