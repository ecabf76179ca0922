// What is said about each stage: to the client in plain words, to the crew with the numbers.
#pragma once

#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"
#include "model/works/element.h"

namespace model {

// The words for one kind of stage. In the first four, "{...}" stands for a number of this job; see
// stage_facts.cpp for those that there are.
struct StageWords {
  StageKind kind;
  const char* id;
  const char* name;
  const char* what;
  const char* atEnd;
};

// The words for a kind of stage; every kind but Existing has some.
const StageWords& wordsFor(StageKind kind);

// What to look out for, ending in deference to those who are competent; empty when none is due.
std::string cautionFor(StageKind kind);
// Who usually looks at what before work goes on; empty when nobody does.
std::string holdPointFor(StageKind kind);

// Names of the storeys as ids may carry them: lower case, no spaces, no two alike. "Ground floor"
// gives "ground".
std::vector<std::string> storeySlugs(const std::vector<Storey>& storeys);

// A text with every "{...}" replaced by this job's numbers for this stage.
std::string withFacts(const char* text, const StageKey& key, const Job& job,
                      const SettingOut& settingOut);

}  // namespace model
