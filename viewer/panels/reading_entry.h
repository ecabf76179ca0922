// The line in which a reading is typed: what it says so far, what the drawing says there, and its
// way into the file. No widgets.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/asbuilt/drawn_there.h"
#include "model/asbuilt/point_names.h"
#include "viewer/job_loader.h"
#include "viewer/panels/reading_file.h"

namespace viewer {

enum class ReadingField { None, SetName, Date, By, Target, Point, Along, X, Y, Value, Note, Photo };

// What is said under the line while it is typed.
struct ReadingPreview {
  std::string drawn;                     // "drawn -0.975: read 2.400"
  std::optional<model::Deviation> held;  // once it is whole
  std::string wrong;                     // what the reader of its file would say
  std::string wrongPoint;                // the same while only the value is lacking
  std::vector<std::string> lookAt;       // the same, of what is only unlikely
};

class ReadingEntry {
 public:
  // Opens the line for the set that is looked at, else the last; for a new one where there is none.
  void begin(const model::Job& job, std::optional<size_t> set, const std::string& today);
  void close() { open_ = false; }
  bool open() const { return open_; }

  // The set by its name, for its number changes when the job file does; none for a new one.
  std::optional<size_t> set(const model::Job& job) const;
  void chooseSet(const model::Job& job, size_t set);
  void startSet(const std::string& today);
  bool isNew() const { return setName_.empty(); }

  model::ReadingKind kind() const;
  void chooseKind(model::ReadingKind kind, const model::Job& job);
  // Which of the fields this reading needs now.
  bool needs(ReadingField field) const;
  // The text of a field, to be typed into.
  std::string& text(ReadingField field);
  const std::string& text(ReadingField field) const;
  const std::string& setUp() const { return typed_.setUp; }
  void chooseSetUp(const std::string& name) { typed_.setUp = name; }

  // Names for the fields Target and Point; none for others.
  std::vector<std::string> namesFor(ReadingField field) const;
  // Puts the name that is meant in place of what was begun; a point with a place of its own brings
  // its x and y.
  void complete(ReadingField field);
  // The point that is nearest to a place.
  void pointAt(const ReadyJob& job, const model::Vec3& place);

  // To be called before names or previews are asked for: they are of this job. Cheap while nothing
  // has changed.
  void refer(const ReadyJob& job, const std::string& jobPath);
  // The job has been read again.
  void jobChanged() { key_.clear(); }
  // What is said of what is typed now, as of the last refer().
  const ReadingPreview& preview() const { return preview_; }
  // The first field that is needed and empty; None when it is whole.
  ReadingField lacking() const;
  // The field that comes next, or the one before; round and round.
  ReadingField beside(ReadingField in, bool back) const;
  // The Enter key in a field: completes a name and goes to the next field that lacks something, or
  // writes the reading down. The field to be typed into next. `saved` when it has been written.
  ReadingField enter(ReadingField in, const ReadyJob& job, const std::string& jobPath, bool& saved);
  // What was wrong with the last try; empty when nothing was, or since something was typed.
  const std::string& problem() const { return problem_; }
  void touched() { problem_.clear(); }

  // The readings written since the window opened, the last one last.
  const std::vector<SavedReading>& written() const { return written_; }
  // Takes the last one back; false, with a problem, when that cannot be.
  bool takeLastBack();
  // Every text, for lettering.
  std::vector<std::string> texts() const;

 private:
  model::TypedReading whole() const;
  bool onWall() const;
  void goOnWith(const model::Job& job, const model::ReadingSet& set);
  const model::PointName* pointNamed(const std::string& name) const;
  ReadingPreview previewOf(const ReadyJob& job, const std::string& jobPath) const;

  bool open_ = false;
  std::string setName_;  // empty: a new one
  NewSet fresh_;
  model::TypedReading typed_;  // its target is as it is said
  std::string problem_;
  std::vector<SavedReading> written_;
  // As of the job last referred to, for the texts in the key.
  std::string key_;
  std::vector<model::TargetName> targets_;
  std::vector<model::PointName> points_;
  std::vector<std::string> walls_;  // either way round
  ReadingPreview preview_;
};

}  // namespace viewer
