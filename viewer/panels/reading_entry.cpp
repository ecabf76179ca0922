#include "viewer/panels/reading_entry.h"

#include <algorithm>
#include <charconv>
#include <utility>

#include "model/asbuilt/words.h"
#include "model/job/decimals.h"
#include "model/job/lengths.h"
#include "model/job/reading_columns.h"
#include "model/job/reading_files.h"
#include "model/job/text_file.h"
#include "model/levelling/level_book.h"
#include "model/problem_lines.h"
#include "viewer/panels/names_like.h"

namespace viewer {
namespace {

using model::ReadingKind;

bool isLevel(ReadingKind kind) { return kind == ReadingKind::Level || kind == ReadingKind::Staff; }

// Millimetres that are typed, in metres; nothing while they are no number.
std::optional<double> metresOf(const std::string& typed) {
  const std::string text = model::withDecimalMark(typed, '.');
  double value = 0;
  const char* end = text.data() + text.size();
  const auto [at, error] = std::from_chars(text.data(), end, value);
  if (error != std::errc() || at != end) return std::nullopt;
  return model::fromMillimetres(value);
}

bool beginsOne(const std::string& text, const std::vector<model::PointName>& points) {
  return std::any_of(points.begin(), points.end(), [&](const model::PointName& point) {
    return model::sameName(point.name.substr(0, text.size()), text);
  });
}

// The set's file as it is; empty for a new one, and nothing when it cannot be read.
std::optional<std::string> textOfSet(const model::Job& job, const std::string& jobPath,
                                     std::optional<size_t> set) {
  if (!set) return "";
  std::string fault;
  return model::readTextFile(model::readingPaths(job, jobPath).at(*set), fault);
}

}  // namespace

void ReadingEntry::begin(const model::Job& job, std::optional<size_t> set,
                         const std::string& today) {
  open_ = true;
  problem_.clear();
  if (!set && !setName_.empty()) set = this->set(job);  // that of the last time
  if (!set && !job.readings.empty()) set = job.readings.size() - 1;
  if (set)
    goOnWith(job, job.readings.at(*set));
  else
    startSet(today);
  if (typed_.setUp.empty() && !job.setUps.empty()) typed_.setUp = job.setUps.front().name;
}

// What was read last is most likely read again, elsewhere.
void ReadingEntry::goOnWith(const model::Job& job, const model::ReadingSet& set) {
  const bool same = setName_ == set.name;
  setName_ = set.name;
  if (set.rows.empty() || (same && !typed_.target.empty())) return;
  const model::Reading& last = set.rows.back();
  typed_.kind = model::wordOf(last.kind);
  typed_.target = model::targetWords(job, last.target);
  typed_.setUp = last.setUp;
}

void ReadingEntry::chooseSet(const model::Job& job, size_t set) {
  goOnWith(job, job.readings.at(set));
  touched();
}

std::optional<size_t> ReadingEntry::set(const model::Job& job) const {
  for (size_t i = 0; i < job.readings.size(); ++i)
    if (!setName_.empty() && job.readings[i].name == setName_) return i;
  return std::nullopt;
}

void ReadingEntry::startSet(const std::string& today) {
  setName_.clear();
  if (fresh_.date.empty()) fresh_.date = today;
}

ReadingKind ReadingEntry::kind() const {
  return model::readingKindNamed(typed_.kind).value_or(ReadingKind::Level);
}

void ReadingEntry::chooseKind(ReadingKind kind, const model::Job& job) {
  const bool sameTargets = isLevel(kind) == isLevel(this->kind());
  typed_.kind = model::wordOf(kind);
  if (!sameTargets) typed_.target = isLevel(kind) ? "" : "outer face";
  typed_.along.clear();
  if (typed_.setUp.empty() && !job.setUps.empty()) typed_.setUp = job.setUps.front().name;
  touched();
}

bool ReadingEntry::onWall() const {
  return std::find(walls_.begin(), walls_.end(), typed_.at) != walls_.end();
}

const model::PointName* ReadingEntry::pointNamed(const std::string& name) const {
  const auto found = std::find_if(points_.begin(), points_.end(),
                                  [&](const model::PointName& p) { return p.name == name; });
  return found == points_.end() ? nullptr : &*found;
}

bool ReadingEntry::needs(ReadingField field) const {
  const ReadingKind now = kind();
  switch (field) {
    case ReadingField::None:
      return false;
    case ReadingField::SetName:
    case ReadingField::Date:
    case ReadingField::By:
      return isNew();
    case ReadingField::Along:
      return now == ReadingKind::Face || (isLevel(now) && onWall());
    case ReadingField::X:
    case ReadingField::Y: {
      if (!isLevel(now)) return now == ReadingKind::Corner;
      if (onWall()) return false;
      const model::PointName* point = pointNamed(typed_.at);
      if (point) return point->at.has_value();
      // A name of its own is one that no known name begins with: those are still being typed.
      return !typed_.x.empty() || (!typed_.at.empty() && !beginsOne(typed_.at, points_));
    }
    case ReadingField::Value:
      return now != ReadingKind::Corner;
    default:
      return true;
  }
}

std::string& ReadingEntry::text(ReadingField field) {
  return const_cast<std::string&>(std::as_const(*this).text(field));
}

const std::string& ReadingEntry::text(ReadingField field) const {
  switch (field) {
    case ReadingField::SetName:
      return fresh_.name;
    case ReadingField::Date:
      return fresh_.date;
    case ReadingField::By:
      return fresh_.by;
    case ReadingField::Target:
      return typed_.target;
    case ReadingField::Point:
      return typed_.at;
    case ReadingField::Along:
      return typed_.along;
    case ReadingField::X:
      return typed_.x;
    case ReadingField::Y:
      return typed_.y;
    case ReadingField::Value:
      return typed_.value;
    case ReadingField::Note:
      return typed_.note;
    default:
      return typed_.photo;
  }
}

std::vector<std::string> ReadingEntry::namesFor(ReadingField field) const {
  std::vector<std::string> names;
  if (field == ReadingField::Target)
    for (const model::TargetName& target : targets_) names.push_back(target.words);
  if (field == ReadingField::Point)
    for (const model::PointName& point : points_) names.push_back(point.name);
  return names;
}

void ReadingEntry::complete(ReadingField field) {
  if (field != ReadingField::Target && field != ReadingField::Point) return;
  const auto meant = nameMeant(namesFor(field), text(field));
  if (meant) text(field) = *meant;
  const model::PointName* point = field == ReadingField::Point ? pointNamed(typed_.at) : nullptr;
  if (!point || !point->at) return;
  typed_.x = model::numberValueText(point->at->x * 1000);
  typed_.y = model::numberValueText(point->at->y * 1000);
}

void ReadingEntry::pointAt(const ReadyJob& job, const model::Vec3& place) {
  const auto near =
      model::pointNear(job.model.job, job.model.settingOut, kind(), whole().target, place);
  if (!near) return;
  typed_.at = near->name;
  typed_.along = near->along ? model::numberValueText(*near->along * 1000) : "";
  typed_.x = near->at ? model::numberValueText(near->at->x * 1000) : "";
  typed_.y = near->at ? model::numberValueText(near->at->y * 1000) : "";
  touched();
}

model::TypedReading ReadingEntry::whole() const {
  model::TypedReading row = typed_;
  for (const model::TargetName& target : targets_)
    if (target.words == row.target) row.target = target.name;
  if (!needs(ReadingField::Along)) row.along.clear();
  if (!needs(ReadingField::X)) row.x.clear(), row.y.clear();
  if (!needs(ReadingField::Value)) row.value.clear();
  if (kind() != ReadingKind::Staff) row.setUp.clear();
  return row;
}

void ReadingEntry::refer(const ReadyJob& job, const std::string& jobPath) {
  std::string key = setName_ + "\n" + typed_.kind + "\n" + typed_.setUp;
  for (const std::string& text : texts()) key += "\n" + text;
  if (key == key_) return;
  key_ = key;
  targets_ = model::targetNames(job.model.job, job.model.settingOut, kind());
  walls_.clear();
  for (const model::WallLine& wall : job.model.settingOut.walls) {
    const auto& corners = job.model.settingOut.corners;
    walls_.push_back(wall.name);
    walls_.push_back(corners[wall.to].letter + "-" + corners[wall.from].letter);
  }
  points_ = model::pointNames(job.model.job, job.model.settingOut, kind(), whole().target);
  preview_ = previewOf(job, jobPath);
}

ReadingPreview ReadingEntry::previewOf(const ReadyJob& job, const std::string& jobPath) const {
  ReadingPreview said;
  const model::Job& of = job.model.job;
  const model::TypedReading row = whole();
  model::Reading reading;
  reading.kind = kind();
  reading.target = row.target;
  reading.at = row.at;
  reading.setUp = row.setUp;
  reading.along = metresOf(row.along);
  const auto x = metresOf(row.x), y = metresOf(row.y);
  if (x && y) reading.position = model::Vec2{*x, *y};
  said.drawn = model::drawnThereText(of, job.model.settingOut, reading);
  const ReadingField lack = lacking();
  const bool pointOnly =
      lack == ReadingField::Value && kind() != ReadingKind::Side && kind() != ReadingKind::Diagonal;
  if (lack != ReadingField::None && !pointOnly) return said;
  const auto text = textOfSet(of, jobPath, set(of));
  if (!text) return said;
  if (pointOnly) {
    // With a value that is never wrong: what is told then is the point's.
    model::TypedReading trial = row;
    trial.value = "0";
    said.wrongPoint =
        model::firstError(model::addReading(*text, trial, "", of).problems).value_or("");
    return said;
  }
  const model::AddedReading added = model::addReading(*text, row, "", of);
  for (const model::Problem& problem : added.problems)
    if (problem.severity == model::Severity::Warning)
      said.lookAt.push_back(model::inOneLine(problem));
  said.wrong = model::firstError(added.problems).value_or("");
  if (added.reading)
    said.held = model::holdReading(of, job.model.settingOut, *added.reading, said.wrong);
  return said;
}

ReadingField ReadingEntry::lacking() const {
  for (const ReadingField field :
       {ReadingField::SetName, ReadingField::Target, ReadingField::Point, ReadingField::Along,
        ReadingField::X, ReadingField::Y, ReadingField::Value}) {
    const bool position = field == ReadingField::X || field == ReadingField::Y;
    // A level may be read at a point that has a place and no name; a name that is none is told.
    if (position && isLevel(kind())) continue;
    if (field == ReadingField::Point && !typed_.x.empty() && isLevel(kind())) continue;
    if (needs(field) && text(field).empty()) return field;
  }
  return ReadingField::None;
}

ReadingField ReadingEntry::beside(ReadingField in, bool back) const {
  constexpr int kCount = int(ReadingField::Photo);
  int at = int(in);
  do {
    at += back ? -1 : 1;
    if (at < 1) at = kCount;
    if (at > kCount) at = 1;
  } while (!needs(ReadingField(at)) && at != int(in));
  return ReadingField(at);
}

ReadingField ReadingEntry::enter(ReadingField in, const ReadyJob& job, const std::string& jobPath,
                                 bool& saved) {
  refer(job, jobPath);
  complete(in);
  refer(job, jobPath);
  const ReadingField lack = lacking();
  if (lack != ReadingField::None && lack != in) return lack;
  const model::Job& of = job.model.job;
  const auto number = set(of);
  if (!number && !isNew()) {
    problem_ = "the job has no set \"" + setName_ + "\" just now; choose one, or start a new one";
    return in;
  }
  // What is lacking is told by the reader too, and nothing is written.
  const ReadingSaved result =
      number ? saveReading(jobPath, of, *number, whole()) : saveInNewSet(jobPath, fresh_, whole());
  if (const auto* wrong = std::get_if<std::string>(&result)) {
    problem_ = *wrong;
    return in;
  }
  written_.push_back(std::get<SavedReading>(result));
  if (isNew()) setName_ = std::exchange(fresh_, {}).name;
  for (const ReadingField field :
       {ReadingField::Point, ReadingField::Along, ReadingField::X, ReadingField::Y,
        ReadingField::Value, ReadingField::Note, ReadingField::Photo})
    text(field).clear();
  problem_.clear();
  saved = true;
  return ReadingField::Point;
}

bool ReadingEntry::takeLastBack() {
  if (written_.empty()) return false;
  if (const auto wrong = takeBack(written_.back())) {
    problem_ = *wrong;
    return false;
  }
  written_.pop_back();
  problem_.clear();
  return true;
}

std::vector<std::string> ReadingEntry::texts() const {
  return {fresh_.name, fresh_.date, fresh_.by,    typed_.target, typed_.at,    typed_.along,
          typed_.x,    typed_.y,    typed_.value, typed_.note,   typed_.photo, setName_};
}

}  // namespace viewer
