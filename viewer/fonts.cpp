#include "viewer/fonts.h"

#include <imgui.h>

#include <array>
#include <filesystem>

namespace viewer {
namespace {

constexpr float kTextSize = 16, kHeadingSize = 27;

// Where Debian and its kin keep typefaces; the files' names are the same everywhere.
std::string findFont(const std::vector<std::string>& files) {
  std::vector<std::filesystem::path> folders;
  for (const char* root : {"/usr/share/fonts", "/usr/local/share/fonts"})
    for (const char* sub :
         {"opentype/b612", "truetype/b612", "truetype/noto", "opentype/noto", "truetype/dejavu",
          "truetype", "opentype", "b612", "noto", "google-noto", "dejavu"})
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

ImFont* load(const std::vector<std::string>& files, const std::vector<std::string>& others,
             float size, const ImWchar* ranges) {
  ImFontAtlas& atlas = *ImGui::GetIO().Fonts;
  const std::string file = findFont(files);
  ImFontConfig config;
  config.OversampleH = 2;
  config.SizePixels = size;
  ImFont* font =
      file.empty() ? nullptr : atlas.AddFontFromFileTTF(file.c_str(), size, &config, ranges);
  if (!font) return atlas.AddFontDefault(&config);
  // What the family lacks comes from another one; what it has, it keeps.
  const std::string other = findFont(others);
  if (!other.empty()) {
    ImFontConfig merge;
    merge.MergeMode = true;
    merge.OversampleH = 1;
    atlas.AddFontFromFileTTF(other.c_str(), size, &merge, ranges);
  }
  return font;
}

}  // namespace

Lettering loadLettering(float scale, const std::vector<std::string>& samples) {
  ImGuiIO& io = ImGui::GetIO();
  io.Fonts->Clear();
  ImFontGlyphRangesBuilder builder;
  builder.AddRanges(kAlphabets.data());
  for (const std::string& sample : samples) builder.AddText(sample.c_str());
  ImVector<ImWchar> ranges;
  builder.BuildRanges(&ranges);
  const std::vector<std::string> plain{"NotoSans-Regular.ttf", "DejaVuSans.ttf"};
  const std::vector<std::string> strong{"NotoSans-Bold.ttf", "DejaVuSans-Bold.ttf"};
  const auto withFirst = [](const char* first, std::vector<std::string> rest) {
    rest.insert(rest.begin(), {std::string(first) + ".otf", std::string(first) + ".ttf"});
    return rest;
  };
  load(withFirst("B612-Regular", plain), plain, kTextSize * scale, ranges.Data);
  load(withFirst("B612-Bold", strong), strong, kTextSize * scale, ranges.Data);
  load(withFirst("B612-Bold", strong), strong, kHeadingSize * scale, ranges.Data);
  // The ranges are read when the atlas is built, so that must be now.
  io.Fonts->Build();
  return letteringNow();
}

bool letteringCovers(const std::vector<std::string>& samples) {
  const Lettering lettering = letteringNow();
  if (!lettering.text) return false;
  ImFontGlyphRangesBuilder builder;
  for (const std::string& sample : samples) builder.AddText(sample.c_str());
  ImVector<ImWchar> ranges;
  builder.BuildRanges(&ranges);
  for (int i = 0; i + 1 < ranges.Size && ranges[i]; i += 2)
    for (unsigned c = ranges[i]; c <= ranges[i + 1]; ++c)
      if (!lettering.text->FindGlyphNoFallback(ImWchar(c))) return false;
  return true;
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
