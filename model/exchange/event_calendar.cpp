#include "model/exchange/event_calendar.h"

#include <algorithm>
#include <map>

#include "model/exchange/site_events.h"
#include "model/job/slug.h"
#include "model/programme/calendar.h"

namespace model {
namespace {

// RFC 5545, section 3.3.11.
std::string escaped(const std::string& text) {
  std::string result;
  for (const char c : text) {
    if (c == '\n') {
      result += "\\n";
      continue;
    }
    if (static_cast<unsigned char>(c) < ' ') continue;
    if (c == ';' || c == ',' || c == '\\') result += '\\';
    result += c;
  }
  return result;
}

// Section 3.1: no line is longer than 75 octets; none is broken inside a character.
void addLine(std::string& out, const std::string& line) {
  constexpr size_t kMost = 75;
  size_t used = 0;
  for (size_t i = 0; i < line.size();) {
    size_t length = 1;
    while (i + length < line.size() &&
           (static_cast<unsigned char>(line[i + length]) & 0xC0) == 0x80)
      ++length;
    if (used + length > kMost) {
      out += "\r\n ";
      used = 1;
    }
    out.append(line, i, length);
    used += length;
    i += length;
  }
  out += "\r\n";
}

std::string basicDate(const std::string& iso) {
  std::string digits = iso;
  digits.erase(std::remove(digits.begin(), digits.end(), '-'), digits.end());
  return digits;
}

std::string dayAfter(const std::string& iso) { return isoDate(dayNumber(iso).value_or(0) + 1); }

class Calendar {
 public:
  explicit Calendar(const Model& model) : job_(slugOf(model.job.name)) {
    // When the information was made: the job knows no other day than its own.
    const std::string made =
        model.programme.asAt.empty() ? model.job.programme.start : model.programme.asAt;
    stamp_ = basicDate(made) + "T000000Z";
    addLine(out_, "BEGIN:VCALENDAR");
    addLine(out_, "VERSION:2.0");
    addLine(out_, "PRODID:-//Stringcourse//Programme//EN");
    addLine(out_, "CALSCALE:GREGORIAN");
  }
  void add(const std::string& id, const std::string& from, const std::string& last,
           const std::string& summary, const std::string& description) {
    addLine(out_, "BEGIN:VEVENT");
    addLine(out_, "UID:" + job_ + "." + id + "@stringcourse.invalid");
    addLine(out_, "DTSTAMP:" + stamp_);
    addLine(out_, "DTSTART;VALUE=DATE:" + basicDate(from));
    addLine(out_, "DTEND;VALUE=DATE:" + basicDate(dayAfter(last)));
    addLine(out_, "SUMMARY:" + escaped(summary));
    if (!description.empty()) addLine(out_, "DESCRIPTION:" + escaped(description));
    addLine(out_, "TRANSP:TRANSPARENT");
    addLine(out_, "END:VEVENT");
  }
  std::string finished() {
    addLine(out_, "END:VCALENDAR");
    return std::move(out_);
  }

 private:
  std::string out_, job_, stamp_;
};

}  // namespace

std::string eventCalendar(const Model& model, bool stages) {
  Calendar calendar(model);
  if (stages) {
    for (const Stage& stage : model.programme.stages) {
      if (stage.start.empty()) continue;
      calendar.add(stage.id, stage.start, stage.finish, stage.name, stage.what);
    }
  }
  std::map<std::string, int> seen;
  for (const SiteEvent& event : siteEvents(model)) {
    if (event.date.empty()) continue;
    const Stage& stage = model.programme.stages[event.stage];
    std::string id = stage.id + "." + slugOf(nameOf(event.kind));
    if (const int before = seen[id]++) id += "." + std::to_string(before + 1);
    std::string what = nameOf(event.kind);
    what[0] = static_cast<char>(what[0] - 'a' + 'A');
    const bool itself = event.kind == SiteEventKind::Delivery;
    calendar.add(id, event.date, event.date, what + ": " + (itself ? event.text : stage.name),
                 itself ? "For: " + stage.name : event.text);
  }
  return calendar.finished();
}

}  // namespace model
