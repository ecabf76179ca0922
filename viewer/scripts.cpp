#include "viewer/scripts.h"

namespace viewer {
namespace {

constexpr const char* kNoto = "fonts-noto-core";
constexpr const char* kEastAsia = "fonts-droid-fallback";

Script noto(char32_t low, char32_t high, const char* name, const std::string& family) {
  return {
      low,  high, name, {family + "-Regular.ttf"}, {family + "-Bold.ttf", family + "-Regular.ttf"},
      kNoto};
}

// One small typeface for all of them; the large ones serve where they are there instead.
Script eastAsian(char32_t low, char32_t high, const char* name) {
  const std::vector<std::string> files{"DroidSansFallback.ttf", "DroidSansFallbackFull.ttf",
                                       "wqy-microhei.ttc", "NotoSansCJK-Regular.ttc"};
  return {low, high, name, files, files, kEastAsia};
}

}  // namespace

const std::vector<Script>& scripts() {
  static const std::vector<Script> all{
      noto(0x0530, 0x058f, "Armenian", "NotoSansArmenian"),
      noto(0x0590, 0x05ff, "Hebrew", "NotoSansHebrew"),
      noto(0x0600, 0x06ff, "Arabic", "NotoSansArabic"),
      noto(0x0750, 0x077f, "Arabic", "NotoSansArabic"),
      noto(0x0780, 0x07bf, "Thaana", "NotoSansThaana"),
      noto(0x08a0, 0x08ff, "Arabic", "NotoSansArabic"),
      noto(0x0900, 0x097f, "Devanagari", "NotoSansDevanagari"),
      noto(0x0980, 0x09ff, "Bengali", "NotoSansBengali"),
      noto(0x0a00, 0x0a7f, "Gurmukhi", "NotoSansGurmukhi"),
      noto(0x0a80, 0x0aff, "Gujarati", "NotoSansGujarati"),
      noto(0x0b00, 0x0b7f, "Odia", "NotoSansOriya"),
      noto(0x0b80, 0x0bff, "Tamil", "NotoSansTamil"),
      noto(0x0c00, 0x0c7f, "Telugu", "NotoSansTelugu"),
      noto(0x0c80, 0x0cff, "Kannada", "NotoSansKannada"),
      noto(0x0d00, 0x0d7f, "Malayalam", "NotoSansMalayalam"),
      noto(0x0d80, 0x0dff, "Sinhala", "NotoSansSinhala"),
      noto(0x0e00, 0x0e7f, "Thai", "NotoSansThai"),
      noto(0x0e80, 0x0eff, "Lao", "NotoSansLao"),
      noto(0x1000, 0x109f, "Burmese", "NotoSansMyanmar"),
      noto(0x10a0, 0x10ff, "Georgian", "NotoSansGeorgian"),
      eastAsian(0x1100, 0x11ff, "Korean"),
      noto(0x1200, 0x139f, "Ethiopic", "NotoSansEthiopic"),
      noto(0x13a0, 0x13ff, "Cherokee", "NotoSansCherokee"),
      noto(0x1400, 0x167f, "Canadian syllabic", "NotoSansCanadianAboriginal"),
      noto(0x1780, 0x17ff, "Khmer", "NotoSansKhmer"),
      noto(0x1c90, 0x1cbf, "Georgian", "NotoSansGeorgian"),
      noto(0x2190, 0x22ff, "mathematical", "NotoSansMath"),
      noto(0x2300, 0x27bf, "symbol", "NotoSansSymbols2"),
      noto(0x2b00, 0x2bff, "symbol", "NotoSansSymbols2"),
      noto(0x2d30, 0x2d7f, "Tifinagh", "NotoSansTifinagh"),
      eastAsian(0x2e80, 0x303f, "Chinese"),
      eastAsian(0x3040, 0x31ff, "Japanese"),
      eastAsian(0x3200, 0x4dbf, "Chinese"),
      eastAsian(0x4e00, 0x9fff, "Chinese"),
      eastAsian(0xac00, 0xd7ff, "Korean"),
      eastAsian(0xf900, 0xfaff, "Chinese"),
      noto(0xfb13, 0xfb17, "Armenian", "NotoSansArmenian"),
      noto(0xfb1d, 0xfb4f, "Hebrew", "NotoSansHebrew"),
      noto(0xfb50, 0xfdff, "Arabic", "NotoSansArabic"),
      eastAsian(0xfe30, 0xfe4f, "Chinese"),
      noto(0xfe70, 0xfeff, "Arabic", "NotoSansArabic"),
      eastAsian(0xff00, 0xffef, "Chinese"),
  };
  return all;
}

const Script* scriptOf(char32_t c) {
  for (const Script& script : scripts())
    if (c >= script.low && c <= script.high) return &script;
  return nullptr;
}

}  // namespace viewer
