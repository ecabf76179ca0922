#include "model/levelling/book_words.h"

#include <algorithm>
#include <cmath>

#include "model/level_text.h"

namespace model {
namespace {

std::string counted(size_t number, const std::string& one) {
  return std::to_string(number) + " " + one + (number == 1 ? "" : "s");
}

std::string capital(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 32);
  return text;
}

}  // namespace

std::string highOrLow(double metres) {
  const std::string size = lengthText(std::abs(metres));
  if (size == "0") return "on";
  return size + (metres > 0 ? " high" : " low");
}

std::string closingText(const Closing& closing) {
  const std::string over = closing.distance ? lengthText(*closing.distance * 1e-3) + " m"
                                            : counted(closing.setUps, "set-up");
  const std::string off = highOrLow(closing.error());
  const std::string allowed = lengthText(closing.allowed) + " is allowed over " + over;
  if (off == "on") return "closes on " + closing.on + " with no error; " + allowed;
  const std::string text = "closes " + off + " on " + closing.on;
  if (closing.within()) return text + "; " + allowed;
  return text + ", " + allowed + ": level it again";
}

std::string notClosedText(const LevelBook& book) {
  return "does not close: the level of " + book.bookings.back().point +
         " is not known beforehand, so a wrong reading would not show; end on a mark";
}

std::string checkText(const ArithmeticCheck& check) {
  std::string text;
  for (size_t i = 0; i < check.names.size(); ++i) {
    text += (i > 0 ? "; " : "") + check.names[i] + " " + levelText(check.figures[i]);
  }
  return text + (check.holds() ? ": they agree" : ": they do not agree");
}

std::vector<std::string> knownPointTexts(const LevelBook& book, const ReducedBook& reduced) {
  std::vector<std::string> texts;
  for (size_t i = 1; i + 1 < reduced.rows.size(); ++i) {
    const ReducedRow& row = reduced.rows[i];
    if (!row.known) continue;
    const std::string off = highOrLow(row.adjusted() - *row.known);
    texts.push_back(
        book.bookings[i].point +
        (off == "on" ? " comes out at its known level, " : " comes out " + off + " of its known ") +
        levelText(*row.known));
  }
  return texts;
}

std::vector<std::string> bookSentences(const LevelBook& book, const ReducedBook& reduced,
                                       const std::optional<Closing>& closing, bool adjusted) {
  std::vector<std::string> sentences;
  for (const ArithmeticCheck& check : reduced.checks)
    sentences.push_back(capital(checkText(check)) + ".");
  sentences.push_back("The book " + (closing ? closingText(*closing) : notClosedText(book)) + ".");
  for (const std::string& text : knownPointTexts(book, reduced)) sentences.push_back(text + ".");
  if (adjusted) {
    sentences.push_back(
        std::string("Adjusted: the error is shared ") +
        (closing && closing->distance ? "by the distance levelled" : "evenly over the set-ups") +
        ".");
  }
  return sentences;
}

std::string marksText(const LevelBook& book, const std::vector<Mark>& marks) {
  std::string text;
  for (const Mark& mark : marks) {
    const bool read = std::any_of(book.bookings.begin(), book.bookings.end(),
                                  [&](const auto& b) { return sameName(b.point, mark.name); });
    if (read) text += (text.empty() ? "" : "; ") + mark.name + " " + levelText(mark.level);
  }
  return text.empty() ? "No point of the book is a bench mark of the job"
                      : "Known from the job: " + text;
}

std::string methodName(BookMethod method) {
  return method == BookMethod::RiseAndFall ? "rise and fall" : "height of collimation";
}

}  // namespace model
