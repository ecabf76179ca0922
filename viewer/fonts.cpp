#include "viewer/fonts.h"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <filesystem>
#include <set>

#include "viewer/font_file.h"
#include "viewer/reading_order.h"
#include "viewer/scripts.h"
#include "viewer/utf8.h"

namespace viewer {
namespace {

constexpr float kTextSize = 16, kHeadingSize = 27;
constexpr char32_t kMostLetter = 0xffff;  // Dear ImGui's letters have 16 bits

// Where Debian and its kin keep typefaces; the files' names are the same everywhere.
std::string findFont(const std::vector<std::string>& files) {
  std::vector<std::filesystem::path> folders{"/usr/share/fonts-droid-fallback/truetype"};
  for (const char* root : {"/usr/share/fonts", "/usr/local/share/fonts"})
    for (const char* sub : {"opentype/b612", "truetype/b612", "truetype/noto", "opentype/noto",
                            "truetype/dejavu", "truetype/droid", "truetype/wqy", "truetype",
                            "opentype", "b612", "noto", "google-noto", "dejavu", "droid"})
      folders.push_back(std::filesystem::path(root) / sub);
  for (const std::string& file : files)
    for (const auto& folder : folders) {
      std::error_code ignored;
      const auto path = folder / file;
      if (std::filesystem::is_regular_file(path, ignored)) return path.string();
    }
  return {};
}

// Latin with accents, Greek, Cyrillic, and the signs that drawings use.
constexpr std::array<ImWchar, 15> kAlphabets{0x0020, 0x024f, 0x0370, 0x03ff, 0x0400,
                                             0x052f, 0x1e00, 0x1eff, 0x2010, 0x2044,
                                             0x20ac, 0x20ac, 0x2190, 0x2193, 0};

// The characters of the samples as they will stand on the sheet; without spaces and controls.
std::set<char32_t> charactersOf(const std::vector<std::string>& samples) {
  std::set<char32_t> found;
  for (const std::string& sample : samples) {
    // As written too: a field that is typed into shows letters unjoined.
    for (const std::string& text : {sample, asSeen(sample)})
      for (const char32_t c : codePoints(text))
        if (c > 0x20 && scriptOf(c) != nullptr) found.insert(c);
    for (const char32_t c : codePoints(asSeen(sample)))
      if (c > 0x20) found.insert(c);
  }
  return found;
}

// A typeface with one script, and what of it is wanted.
struct Addition {
  const Script* script = nullptr;
  ImVector<ImWchar> ranges;
};

std::vector<Addition> additionsFor(const std::set<char32_t>& characters) {
  std::vector<Addition> additions;
  for (const Script& script : scripts()) {
    ImFontGlyphRangesBuilder builder;
    bool any = false;
    const auto end = characters.upper_bound(script.high);
    for (auto c = characters.lower_bound(script.low); c != end; ++c, any = true)
      builder.AddChar(ImWchar(*c));
    if (!any) continue;
    additions.push_back({&script, {}});
    builder.BuildRanges(&additions.back().ranges);
  }
  return additions;
}

// `em` in pixels.
void merge(const std::vector<std::string>& files, double em, const ImWchar* ranges) {
  const std::string file = findFont(files);
  if (file.empty()) return;
  const float size = float(em * lineInEms(file));
  ImFontConfig config;
  config.MergeMode = true;
  config.OversampleH = 1;
  ImGui::GetIO().Fonts->AddFontFromFileTTF(file.c_str(), size, &config, ranges);
}

// One cut of the family. What the family lacks comes from others; what it has, it keeps.
struct CutFiles {
  std::vector<std::string> own, others;
  bool bold = false;
};

void load(const CutFiles& cut, float size, const ImWchar* ranges,
          const std::vector<Addition>& additions) {
  ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
  const std::string file = findFont(cut.own);
  ImFontConfig config;
  config.OversampleH = 2;
  config.SizePixels = size;
  if (file.empty() || !atlas.AddFontFromFileTTF(file.c_str(), size, &config, ranges))
    atlas.AddFontDefault(&config);
  const double em = double(size) / (file.empty() ? 1 : lineInEms(file));
  merge(cut.others, em, ranges);
  for (const Addition& addition : additions)
    merge(cut.bold ? addition.script->boldFiles : addition.script->files, em, addition.ranges.Data);
}

CutFiles cutFiles(const std::string& first, const std::string& noto, const std::string& dejavu,
                  bool bold) {
  return {{first + ".otf", first + ".ttf", noto, dejavu}, {noto, dejavu}, bold};
}

std::vector<char32_t> lacking(const std::vector<std::string>& samples) {
  const Lettering lettering = letteringNow();
  std::vector<char32_t> missing;
  for (const std::string& sample : samples)
    for (const char32_t c : codePoints(asSeen(sample))) {
      if (c <= 0x20) continue;
      if (c > kMostLetter || !lettering.text || !lettering.text->FindGlyphNoFallback(ImWchar(c)))
        missing.push_back(c);
    }
  return missing;
}

// "Hebrew", "Hebrew and Thai", "Hebrew, Thai and Arabic".
std::string listed(const std::vector<std::string>& names) {
  std::string text;
  for (size_t i = 0; i < names.size(); ++i)
    text += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
  return text;
}

void addOnce(std::vector<std::string>& names, const std::string& name) {
  if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
}

}  // namespace

Lettering loadLettering(float scale, const std::vector<std::string>& samples) {
  ImGuiIO& io = ImGui::GetIO();
  io.Fonts->Clear();
  const std::set<char32_t> characters = charactersOf(samples);
  ImFontGlyphRangesBuilder builder;
  builder.AddRanges(kAlphabets.data());
  for (const char32_t c : characters)
    if (c <= kMostLetter) builder.AddChar(ImWchar(c));
  ImVector<ImWchar> ranges;
  builder.BuildRanges(&ranges);
  const std::vector<Addition> additions = additionsFor(characters);
  const CutFiles plain = cutFiles("B612-Regular", "NotoSans-Regular.ttf", "DejaVuSans.ttf", false);
  const CutFiles bold = cutFiles("B612-Bold", "NotoSans-Bold.ttf", "DejaVuSans-Bold.ttf", true);
  load(plain, kTextSize * scale, ranges.Data, additions);
  load(bold, kTextSize * scale, ranges.Data, additions);
  load(bold, kHeadingSize * scale, ranges.Data, additions);
  // The ranges are read when the atlas is built, so that must be now.
  io.Fonts->Build();
  return letteringNow();
}

bool letteringCovers(const std::vector<std::string>& samples) { return lacking(samples).empty(); }

std::optional<model::Problem> lackingLetters(const std::vector<std::string>& samples) {
  const std::vector<char32_t> missing = lacking(samples);
  if (missing.empty()) return std::nullopt;
  std::vector<std::string> names, packages;
  for (const char32_t c : missing) {
    const Script* script = scriptOf(c);
    addOnce(names, script ? script->name : "other");
    if (script) addOnce(packages, script->package);
  }
  model::Problem problem;
  problem.severity = model::Severity::Warning;
  problem.what = "no typeface on this machine has the job's " + listed(names) +
                 " letters; they are shown as ?";
  problem.instead = packages.empty() ? "" : "Debian has them in " + listed(packages);
  return problem;
}

Lettering letteringNow() {
  const ImVector<ImFont*>& fonts = ImGui::GetIO().Fonts->Fonts;
  Lettering lettering;
  if (fonts.empty()) return lettering;
  lettering.text = fonts[0];
  lettering.bold = fonts.Size > 1 ? fonts[1] : fonts[0];
  lettering.heading = fonts.Size > 2 ? fonts[2] : lettering.bold;
  lettering.unit = lettering.text->FontSize / kTextSize;
  return lettering;
}

}  // namespace viewer
