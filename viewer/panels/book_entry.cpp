#include "viewer/panels/book_entry.h"

#include <algorithm>
#include <filesystem>
#include <utility>

#include "model/job/csv_rows.h"
#include "model/job/reading_files.h"
#include "model/job/text_file.h"
#include "model/job/write_job.h"
#include "model/levelling/set_up.h"
#include "model/problem_lines.h"

namespace viewer {
namespace {

namespace fs = std::filesystem;

constexpr int kCells = int(model::kTypedColumns.size());

std::optional<std::string> bytesOf(const std::string& path) {
  std::string fault;
  return model::readTextFile(path, fault);
}

std::string beside(const std::string& jobPath, const std::string& name) {
  return (fs::path(jobPath).parent_path() / name).string();
}

bool isBook(const std::string& path) {
  const auto text = bytesOf(path);
  if (!text) return false;
  model::Problems ignored;
  const std::string heading = text->substr(0, text->find('\n'));
  const model::CsvRows csv = model::readCsvRows(heading, path, "a level book", ignored);
  return !csv.rows.empty() && model::readBookColumns(csv.rows[0], path, ignored).usable;
}

bool endsInCsv(const std::string& name) {
  return name.size() > 4 && model::sameName(name.substr(name.size() - 4), ".csv");
}

}  // namespace

model::BookSettings bookSettings(const model::Job& job) {
  model::BookSettings settings;
  settings.marks = model::marksOf(job);
  settings.ordnanceDatum = job.ordnanceDatum;
  return settings;
}

std::vector<std::string> levelBooksBeside(const std::string& jobPath) {
  std::vector<std::string> names;
  std::error_code error;
  const fs::path folder = fs::absolute(jobPath, error).parent_path();
  for (fs::directory_iterator at(folder, error), end; !error && at != end; at.increment(error)) {
    const std::string name = at->path().filename().string();
    if (endsInCsv(name) && at->is_regular_file(error) && isBook(at->path().string()))
      names.push_back(name);
  }
  std::sort(names.begin(), names.end());
  return names;
}

BookEntry::BookEntry() { become({}); }

void BookEntry::become(model::TypedBook book) {
  book_ = std::move(book);
  clean_ = model::typedBookText(book_);
  out_.reset();
  keepEmptyRow();
}

void BookEntry::keepEmptyRow() {
  if (book_.rows.empty() || !book_.rows.back().empty()) book_.rows.emplace_back();
}

void BookEntry::insertRow(size_t before) {
  book_.rows.insert(book_.rows.begin() + std::ptrdiff_t(std::min(before, book_.rows.size())),
                    model::TypedBooking{});
  touched();
}

void BookEntry::takeOut(size_t row) {
  if (row < book_.rows.size()) {
    const auto at = book_.rows.begin() + std::ptrdiff_t(row);
    if (!at->empty()) out_ = TakenOut{row, std::move(*at)};
    book_.rows.erase(at);
  }
  keepEmptyRow();
  touched();
}

void BookEntry::putBack() {
  if (!out_) return;
  insertRow(out_->at);
  book_.rows.at(std::min(out_->at, book_.rows.size() - 1)) = std::move(out_->row);
  out_.reset();
  keepEmptyRow();
}

int BookEntry::fieldOf(size_t row, size_t cell) { return int(row) * kCells + int(cell) + 1; }

size_t BookEntry::rowOf(int field) { return field > 0 ? size_t((field - 1) / kCells) : 0; }

int BookEntry::fieldBeside(int field, bool back) const {
  constexpr auto kByHand = model::BookColumn::Booked;
  int to = field + (back ? -1 : 1);
  if (to > 0 && model::kTypedColumns.at(size_t((to - 1) % kCells)) == kByHand) to += back ? -1 : 1;
  return field > 0 && to > 0 && rowOf(to) < book_.rows.size() ? to : 0;
}

int BookEntry::fieldInRow(int field, int by) const {
  const int to = field + by * kCells;
  return field > 0 && to > 0 && rowOf(to) < book_.rows.size() ? to : 0;
}

const model::WorkedBook& BookEntry::worked(const model::BookSettings& settings) {
  std::string key = model::typedBookText(book_) + (adjust ? "a" : "-") +
                    (method == model::BookMethod::Collimation ? "c" : "-") +
                    std::to_string(book_.rows.size());
  for (const model::TypedBooking& row : book_.rows) key += row.empty() ? 'e' : '.';
  for (const model::Mark& mark : settings.marks) key += mark.name + std::to_string(mark.level);
  if (key == key_) return worked_;
  key_ = std::move(key);
  worked_ = model::workOut(book_, file, settings, method, adjust);
  return worked_;
}

bool BookEntry::unsaved() const { return model::typedBookText(book_) != clean_; }

void BookEntry::touched() {
  asked_.clear();
  notice_.clear();
}

bool BookEntry::refuse(const std::string& why) {
  notice_ = why;
  warns_ = true;
  return false;
}

bool BookEntry::sure(const std::string& of, const std::string& why) {
  if (asked_ == of) return asked_.clear(), true;
  asked_ = of;
  return refuse(why);
}

bool BookEntry::save(const std::string& jobPath, const model::BookSettings& settings) {
  if (!file.empty() && !endsInCsv(file)) file += ".csv";
  if (!model::readingFileFault(file).empty() || file.find('/') != std::string::npos)
    return refuse("the book needs a file's name; it lies beside the job file: level-book.csv");
  if (std::all_of(book_.rows.begin(), book_.rows.end(),
                  [](const model::TypedBooking& row) { return row.empty(); }))
    return refuse("there is nothing to save yet");
  const std::string path = beside(jobPath, file);
  const auto there = bytesOf(path);
  const bool ours = path == path_ && there == disk_;
  if (there && !ours &&
      !sure("save " + path, path == path_
                                ? file + " has been changed since; save again to write over it"
                                : "there is a " + file + " already; save again to write over it"))
    return false;
  model::TypedBook filled = book_;
  model::fillKnownLevels(filled, settings);
  const std::string text = model::typedBookText(filled);
  if (const auto failed = model::saveAtomically(path, text))
    return refuse(model::inOneLine(*failed));
  book_ = std::move(filled);
  clean_ = text;
  disk_ = text;
  path_ = path;
  notice_ = "Saved as " + file;
  warns_ = false;
  asked_.clear();
  return true;
}

bool BookEntry::openFile(const std::string& jobPath, const std::string& name) {
  if (unsaved() &&
      !sure("open " + name, "this book is not saved; choose " + name + " again to leave it"))
    return false;
  const std::string path = beside(jobPath, name);
  std::string fault;
  const auto text = model::readTextFile(path, fault);
  if (!text) return refuse(model::inOneLine(model::unreadableFile(path, fault)));
  model::Problems problems;
  auto book = model::readTypedBook(*text, name, problems);
  if (!book) return refuse(name + ": " + model::firstError(problems).value_or("no level book"));
  become(std::move(*book));
  file = name;
  disk_ = text;
  path_ = path;
  touched();
  return true;
}

bool BookEntry::startAnew() {
  if (unsaved() && !sure("new", "this book is not saved; start a new one again to leave it"))
    return false;
  become({});
  file = "level-book.csv";
  disk_.reset();
  path_.clear();
  touched();
  return true;
}

bool BookEntry::mayClose() {
  return !unsaved() || sure("close " + model::typedBookText(book_),
                            "this book is not saved; save it, or close the window again");
}

std::vector<std::string> BookEntry::texts() const {
  std::vector<std::string> texts{file};
  for (const model::TypedBooking& row : book_.rows)
    texts.insert(texts.end(), row.cells.begin(), row.cells.end());
  return texts;
}

}  // namespace viewer
