#include "model/job/csv_rows.h"

#include <algorithm>

#include "model/job/text_index.h"

namespace model {
namespace {

constexpr std::string_view kSpaces = " \t\r\n";

std::string trimmed(std::string_view text) {
  const size_t first = text.find_first_not_of(kSpaces);
  if (first == std::string_view::npos) return {};
  return std::string(text.substr(first, text.find_last_not_of(kSpaces) - first + 1));
}

// Counts a character in the first line outside quotes.
size_t countInFirstLine(std::string_view text, char wanted) {
  size_t count = 0;
  bool quoted = false;
  for (char c : text) {
    if (c == '"') quoted = !quoted;
    if (quoted) continue;
    if (c == '\n') break;
    count += c == wanted;
  }
  return count;
}

// A comma may stand in a heading of a file with semicolons, but hardly the other way round.
char separatorOf(std::string_view text) {
  for (char candidate : {';', '\t'}) {
    if (countInFirstLine(text, candidate) > 0) return candidate;
  }
  return ',';
}

// Goes through the text once, cell by cell.
class Scanner {
 public:
  Scanner(std::string_view text, const std::string& file, Problems& problems)
      : text_(text), index_(text), file_(file), problems_(problems) {
    result_.separator = separatorOf(text);
  }

  CsvRows scan() {
    while (at_ < text_.size() && result_.whole) scanRow();
    return std::move(result_);
  }

 private:
  void scanRow() {
    CsvRow row;
    row.place = index_.placeOf(at_);
    bool any = false, more = true;
    while (more && result_.whole) {
      row.cells.push_back(scanCell());
      any = any || !row.cells.back().text.empty();
      more = at_ < text_.size() && text_[at_] == result_.separator;
      if (at_ < text_.size()) ++at_;  // the separator or the line's end
    }
    if (any) result_.rows.push_back(std::move(row));
  }

  CsvCell scanCell() {
    while (at_ < text_.size() && (text_[at_] == ' ')) ++at_;
    const size_t start = at_;
    CsvCell cell{{}, index_.placeOf(start)};
    if (at_ < text_.size() && text_[at_] == '"') {
      cell.text = trimmed(scanQuoted(start));
      return cell;
    }
    while (at_ < text_.size() && text_[at_] != result_.separator && text_[at_] != '\n') ++at_;
    cell.text = trimmed(text_.substr(start, at_ - start));
    return cell;
  }

  std::string scanQuoted(size_t start) {
    std::string text;
    for (++at_; at_ < text_.size(); ++at_) {
      if (text_[at_] != '"') {
        text += text_[at_];
      } else if (at_ + 1 < text_.size() && text_[at_ + 1] == '"') {
        text += text_[++at_];
      } else {
        ++at_;
        skipAfterQuote();
        return text;
      }
    }
    problems_.push_back({file_, index_.placeOf(start), Severity::Error,
                         "the quote that opens here is not closed",
                         "close it with \"; inside a text in quotes, \" is written \"\""});
    result_.whole = false;
    return text;
  }

  void skipAfterQuote() {
    const size_t start = at_;
    while (at_ < text_.size() && text_[at_] != result_.separator && text_[at_] != '\n') ++at_;
    if (trimmed(text_.substr(start, at_ - start)).empty()) return;
    problems_.push_back({file_, index_.placeOf(start), Severity::Error,
                         "there is more after the closing quote",
                         "put the whole cell in quotes; inside them, \" is written \"\""});
  }

  std::string_view text_;
  LineIndex index_;
  const std::string& file_;
  Problems& problems_;
  CsvRows result_;
  size_t at_ = 0;
};

}  // namespace

CsvRows readCsvRows(std::string_view text, const std::string& file, const std::string& what,
                    Problems& problems) {
  CsvRows refused;
  refused.whole = false;
  if (text.size() > kMostTextBytes) {
    problems.push_back({file,
                        {},
                        Severity::Error,
                        "the file is over 1 MiB",
                        what + " is a few pages of text; is this the right file?"});
    return refused;
  }
  const CleanedText cleaned = cleanedText(text, file, problems);
  if (!cleaned.isText()) {
    problems.back().instead =
        what + " is saved as CSV, plain text in UTF-8; is this the right file?";
    return refused;
  }
  return Scanner(cleaned.text, file, problems).scan();
}

std::string csvCellText(std::string_view text, char separator) {
  const bool plain = text.find(separator) == std::string_view::npos &&
                     text.find_first_of("\"\r\n") == std::string_view::npos;
  if (plain) return std::string(text);
  std::string quoted = "\"";
  for (char c : text) {
    if (c == '"') quoted += '"';
    quoted += c;
  }
  return quoted + "\"";
}

}  // namespace model
