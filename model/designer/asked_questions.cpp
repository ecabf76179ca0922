// What the job asks in its own words, what its readings ask, and what the checks found.
#include <algorithm>
#include <cctype>
#include <cmath>
#include <string_view>

#include "model/asbuilt/designer_questions.h"
#include "model/checks/check_building.h"
#include "model/designer/sheet_parts.h"
#include "model/levelling/level_book.h"
#include "model/programme/level_made.h"
#include "model/walls/leaf_plan.h"

namespace model {

namespace {

// The first stage that comes after what was read is there: by the day it was read on, else by what
// it was read of.
std::optional<size_t> stageAfter(const SheetData& data, const Deviation& d) {
  const auto& stages = data.model.programme.stages;
  const std::string& date = data.model.job.readings[d.set].date;
  if (!date.empty())
    for (size_t i = 0; i < stages.size(); ++i)
      if (stages[i].start > date) return i;
  const SettingOut& out = data.model.settingOut;
  const auto times = timesOfLevels(out, data.model.works, data.model.programme);
  const std::string family = d.target.substr(0, d.target.find(':'));
  for (size_t i = 0; i < out.schedule.size(); ++i) {
    if (!out.schedule[i].key.starts_with(family)) continue;
    const double time = times[i];
    if (time >= 0 && std::ceil(time - 1e-9) < double(stages.size()))
      return size_t(std::ceil(time - 1e-9));
  }
  return std::nullopt;
}

std::string lower(std::string text) {
  for (char& c : text) c = char(std::tolower(static_cast<unsigned char>(c)));
  return text;
}

// The stage that the words name, or that has the opening they name.
std::optional<size_t> stageNamed(const Model& model, const std::string& about) {
  if (about.empty()) return std::nullopt;
  if (const auto stage = model.programme.find(about)) return stage;
  const std::string words = lower(about);
  for (size_t i = 0; i < model.settingOut.openings.size(); ++i)
    if (words.find(lower(openingLabel(model.settingOut, i))) != std::string::npos)
      return firstOf(model.programme, {StageKind::RaiseCorners, StageKind::RunIn});
  return std::nullopt;
}

// What a key of the job file is first needed for.
std::optional<size_t> stageOfKey(const Programme& programme, const std::string& path) {
  using K = StageKind;
  const auto begins = [&](const char* with) { return path.starts_with(with); };
  if (begins("foundations") || begins("ground.")) return firstOf(programme, {K::TrenchDig});
  if (begins("cellar")) return firstOf(programme, {K::CellarDig});
  if (begins("site.building")) return firstOf(programme, {K::CellarDig, K::TrenchDig});
  if (begins("ground_floor")) return firstOf(programme, {K::Oversite, K::GroundSlab});
  if (begins("upper_floor")) return firstOf(programme, {K::RaiseCorners});
  if (begins("roof")) return firstOf(programme, {K::RaiseCorners, K::WallPlate});
  if (begins("stair")) return firstOf(programme, {K::FloorOverCellar, K::UpperFloor, K::Stairs});
  if (begins("opening") || begins("movement_joint") || begins("air_brick"))
    return firstOf(programme, {K::WallsBelowDampCourse, K::RaiseCorners});
  return firstOf(programme, {K::SettingOut});
}

// The key of the file that stands at a place; empty when none does.
std::string keyAt(const KeyPlaces& places, const Place& place) {
  std::string found;
  if (place.line == 0) return found;
  for (const auto& [path, at] : places)
    if (at.line == place.line && at.column == place.column && path.size() > found.size())
      found = path;
  return found;
}

// What a check says to the builder, said to the designer instead.
std::string toTheDesigner(std::string words) {
  const std::string ask = "ask the designer";
  for (size_t at = words.find(ask); at != std::string::npos; at = words.find(ask, at)) {
    const std::string_view rest = std::string_view(words).substr(at + ask.size());
    if (rest.starts_with(" for "))
      words.replace(at, ask.size() + 4, "please give");
    else if (rest.starts_with(" how ") || rest.starts_with(" what ") ||
             rest.starts_with(" whether "))
      words.replace(at, ask.size(), "please say");
    else
      words.replace(at, ask.size(), "please answer");
  }
  return words;
}

// Of a file of readings; the job's own problems stand in the job file.
bool ofReadings(const Job& job, const Problem& problem) {
  return std::any_of(job.readings.begin(), job.readings.end(), [&](const ReadingSet& set) {
    return !set.file.empty() && problem.file.ends_with(set.file);
  });
}

}  // namespace

std::vector<SheetQuestion> askedAlready(const SheetData& data) {
  std::vector<SheetQuestion> questions;
  const auto& deviations = data.built.deviations;
  for (const DesignerQuestion& asked : designerQuestions(data.model.job, data.built)) {
    SheetQuestion question;
    question.by = asked.ofJob ? AskedBy::Job : AskedBy::Readings;
    question.about = asked.about;
    question.text = asked.text;
    auto read = asked.deviation;
    for (size_t i = 0; i < deviations.size() && !read; ++i)
      if (asked.ofJob && deviations[i].latest && sameName(asked.about, deviations[i].what))
        read = i;
    if (read) {
      question.at = deviations[*read].place.at;
      question.stage = stageAfter(data, deviations[*read]);
    } else if (asked.ofJob) {
      question.stage = stageNamed(data.model, asked.about);
    } else {
      question.stage = firstOf(data.model.programme, {StageKind::Rafters});
    }
    questions.push_back(std::move(question));
  }
  return questions;
}

std::vector<SheetQuestion> checkQuestions(const SheetData& data) {
  // The bond has questions of its own, with the moves.
  const Problems sizes = checkBrickSizes(data.model.job, data.model.settingOut, "", data.places);
  std::vector<SheetQuestion> questions;
  for (const Problem& problem : data.problems) {
    const bool told = std::any_of(sizes.begin(), sizes.end(),
                                  [&](const Problem& p) { return p.what == problem.what; });
    if (problem.severity != Severity::Warning || told) continue;
    const bool job = !ofReadings(data.model.job, problem);
    const std::string key = job ? keyAt(data.places, problem.place) : "";
    SheetQuestion question;
    question.by = AskedBy::Check;
    question.about = job ? "Check" : "Readings";
    if (problem.place.line > 0) question.about += ", line " + std::to_string(problem.place.line);
    question.text = sentence(problem.what) + ". " + sentence(toTheDesigner(problem.instead)) + ".";
    question.assumed = "it is built as drawn";
    question.stage = stageOfKey(data.model.programme, key);
    questions.push_back(std::move(question));
  }
  return questions;
}

}  // namespace model
