// The level book that is typed in the window: its rows, what comes of them, and its file. No
// widgets.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/levelling/typed_book.h"

namespace viewer {

// What a level book takes from a job: the levels of its bench marks.
model::BookSettings bookSettings(const model::Job& job);

// The CSV files beside the job file whose headings are a level book's, by name.
std::vector<std::string> levelBooksBeside(const std::string& jobPath);

class BookEntry {
 public:
  BookEntry();

  std::string file = "level-book.csv";  // its name, beside the job file
  model::BookMethod method = model::BookMethod::RiseAndFall;
  bool adjust = false;

  // At the end there is always an empty row to type into.
  std::vector<model::TypedBooking>& rows() { return book_.rows; }
  const std::vector<model::TypedBooking>& rows() const { return book_.rows; }
  void keepEmptyRow();
  void insertRow(size_t before);
  void takeOut(size_t row);
  // The row that was taken out last, back where it was, when it said something.
  bool canPutBack() const { return out_.has_value(); }
  void putBack();

  // Fields are numbered row by row, from 1; the hand-worked level has no field.
  static int fieldOf(size_t row, size_t cell);
  static size_t rowOf(int field);
  // The next field along the row, or the one before; from row to row. 0 at either end.
  int fieldBeside(int field, bool back) const;
  // The same field so many rows further down; 0 where there is none.
  int fieldInRow(int field, int by) const;

  // Worked out again only when something has changed.
  const model::WorkedBook& worked(const model::BookSettings& settings);
  // What stands in the rows is not what stands in the file.
  bool unsaved() const;

  // Into the folder of the job file. Refuses, and says why in notice(), when the name is none, the
  // disk does, or the file is not the one that was opened or saved last; the latter is done when it
  // is asked for again at once.
  bool save(const std::string& jobPath, const model::BookSettings& settings);
  // Another book in place of this one; a book that is not saved goes only when asked again at once.
  bool openFile(const std::string& jobPath, const std::string& name);
  bool startAnew();
  // True when the window may close: the book is saved, or this has been asked of just these rows.
  bool mayClose();
  const std::string& notice() const { return notice_; }
  bool noticeWarns() const { return warns_; }
  // Something was typed.
  void touched();

  std::vector<std::string> texts() const;

 private:
  bool refuse(const std::string& why);
  // Says `why` and is false the first time, true when asked again at once.
  bool sure(const std::string& of, const std::string& why);
  void become(model::TypedBook book);

  model::TypedBook book_;
  std::string clean_;                // typedBookText() when it was saved or opened
  std::optional<std::string> disk_;  // the file's bytes then
  std::string path_;                 // whose they are
  std::string asked_, notice_;
  bool warns_ = false;
  struct TakenOut {
    size_t at = 0;
    model::TypedBooking row;
  };
  std::optional<TakenOut> out_;
  std::string key_;
  model::WorkedBook worked_;
};

}  // namespace viewer
