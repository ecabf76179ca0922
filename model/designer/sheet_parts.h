// What the parts of the designer's sheet share. Private to this folder.
#pragma once

#include <initializer_list>
#include <map>
#include <string>
#include <vector>

#include "model/designer/given_keys.h"
#include "model/designer/sheet_facts.h"

namespace model {

// What every part is worked out from.
struct SheetData {
  const Model& model;
  const AsBuilt& built;
  const KeyPlaces& places;
  const Problems& problems;
  const GivenKeys& given;
};

// The numbers of the questions that would give a key, by its path.
using QuestionsOfKeys = std::map<std::string, std::vector<size_t>>;

// Of a number that a key gives or leaves out.
Source sourceOf(const SheetData& data, const KeyRef& key, const QuestionsOfKeys& asked);
// Adds the questions of a key that is not given, each once, in order.
void restOn(const SheetData& data, const KeyRef& key, const QuestionsOfKeys& asked, Source& source);

// The first stage that has work of one of these kinds.
std::optional<size_t> firstOf(const Programme& programme, std::initializer_list<StageKind> kinds);

std::vector<SheetLevel> sheetLevels(const SheetData& data, const QuestionsOfKeys& asked);
std::vector<SheetDimension> sheetDimensions(const SheetData& data, const QuestionsOfKeys& asked);
std::vector<SheetOpening> sheetOpenings(const SheetData& data, const QuestionsOfKeys& asked);
std::vector<OffReading> offReadings(const SheetData& data);

// Questions, not numbered yet.
std::vector<SheetQuestion> askedAlready(const SheetData& data);  // by the job and its readings
std::vector<SheetQuestion> leftOutQuestions(const SheetData& data);
std::vector<SheetQuestion> bondQuestions(const SheetData& data);
std::vector<SheetQuestion> checkQuestions(const SheetData& data);

// "a, b and c".
std::string listedWords(const std::vector<std::string>& words);
// With its first letter large, where that is a Latin one.
std::string sentence(std::string words);

}  // namespace model
