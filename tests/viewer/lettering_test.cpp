// Names in any script: which letters are loaded, in which order they stand, where lines break.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <imgui.h>

#include <fstream>

#include "model/model.h"
#include "tests/support/demo_job.h"
#include "viewer/fonts.h"
#include "viewer/gl/picture_ink.h"
#include "viewer/job_words.h"
#include "viewer/line_breaks.h"
#include "viewer/picture.h"
#include "viewer/reading_order.h"
#include "viewer/scripts.h"
#include "viewer/utf8.h"

namespace viewer {
namespace {

RC_GTEST_PROP(Utf8, GoesThereAndBack, ()) {
  auto characters = *rc::gen::container<std::u32string>(rc::gen::map(
      rc::gen::inRange<std::uint32_t>(1, 0x10ffff), [](std::uint32_t c) { return char32_t(c); }));
  // Halves of surrogate pairs are no characters.
  std::erase_if(characters, [](char32_t c) { return c >= 0xd800 && c < 0xe000; });
  RC_ASSERT(codePoints(utf8(characters)) == characters);
}

RC_GTEST_PROP(Utf8, ReadsAnyBytes, (const std::string& bytes)) {
  RC_ASSERT(codePoints(bytes).size() <= bytes.size());
}

TEST(ReadingOrder, LeavesWhatReadsFromTheLeft) {
  for (const char* text : {"Orchard house", "Häuschen, +2.458", "北の家", "Дом"})
    EXPECT_EQ(asSeen(text), text);
}

// The letters of "bayt" (house) are beh, yeh, teh; joined they take their initial, medial and final
// forms. Source: The Unicode Standard, chart FE70 (Arabic Presentation Forms-B).
TEST(ReadingOrder, JoinsArabicAndTurnsItRound) {
  EXPECT_EQ(codePoints(asSeen("بيت")), (std::u32string{0xfe96, 0xfef4, 0xfe91}));
  // Lam and alef make one letter.
  EXPECT_EQ(codePoints(asSeen("لا")), std::u32string{0xfefb});
}

TEST(ReadingOrder, KeepsFiguresReadableAmongHebrew) {
  EXPECT_EQ(asSeen("בית 12"), "12 תיב");
  EXPECT_EQ(asSeen("Wall A-B, בית"), "Wall A-B, תיב");
}

TEST(ReadingOrder, DropsMarksThatHaveNoShape) { EXPECT_EQ(asSeen("A\u200b\u200eB\ufeff"), "AB"); }

float ofCharacters(const std::string& text) { return float(codePoints(text).size()); }

RC_GTEST_PROP(LineBreaks, FitAndLoseNothing, (const std::string& raw)) {
  std::string text = utf8(codePoints(raw));
  std::replace(text.begin(), text.end(), '\n', ' ');
  const int width = *rc::gen::inRange(1, 20);
  std::string all, kept;
  for (const std::string& line : brokenLines(text, float(width), ofCharacters)) {
    RC_ASSERT(ofCharacters(line) <= float(width));
    RC_ASSERT(!line.empty());
    all += line;
  }
  for (const char c : all)
    if (c != ' ') kept += c;
  std::erase(text, ' ');
  RC_ASSERT(kept == text);
}

TEST(LineBreaks, PartWordsOnlyWhereASingleOneIsTooLong) {
  EXPECT_EQ(brokenLines("top of +3.750 here", 8, ofCharacters),
            (std::vector<std::string>{"top of", "+3.750", "here"}));
  EXPECT_EQ(brokenLines("北京市朝阳区", 4, ofCharacters),
            (std::vector<std::string>{"北京市朝", "阳区"}));
}

// A word of each script that Debian's fonts-noto-core and fonts-droid-fallback have.
const std::vector<std::string>& words() {
  static const std::vector<std::string> all{"北京的房子",  "みかんの家", "サクラ", "과수원 집",
                                            "بيت البستان", "בית הפרדס",  "บ้านสวน", "Սարյան տուն",
                                            "ბაღის სახლი", "बाग़ घर"};
  return all;
}

class LetteringTest : public testing::Test {
 protected:
  void SetUp() override {
    before_ = ImGui::GetCurrentContext();
    own_ = ImGui::CreateContext();
    ImGui::SetCurrentContext(own_);
  }
  void TearDown() override {
    ImGui::SetCurrentContext(before_);
    ImGui::DestroyContext(own_);
  }
  ImGuiContext *before_ = nullptr, *own_ = nullptr;
};

TEST_F(LetteringTest, HasTheLettersOfEveryScriptThatIsAskedFor) {
  for (const std::string& word : words()) {
    loadLettering(1, {word});
    EXPECT_TRUE(letteringCovers({word})) << word;
    EXPECT_FALSE(lackingLetters({word})) << word;
    for (const ImFont* font : ImGui::GetIO().Fonts->Fonts) {
      for (const char32_t c : codePoints(asSeen(word))) {
        if (c == ' ') continue;
        const ImFontGlyph* glyph = font->FindGlyphNoFallback(ImWchar(c));
        ASSERT_TRUE(glyph) << word;
        EXPECT_NE(glyph, font->FallbackGlyph) << word;
      }
    }
  }
}

// Small in a tall line, as some typefaces are made, Arabic could not be read.
TEST_F(LetteringTest, MakesOtherScriptsAsLargeAsLatin) {
  loadLettering(2, {"بالقمح", "東", "בית"});
  const ImFont* font = ImGui::GetIO().Fonts->Fonts[0];
  const auto height = [&](char32_t c) {
    const ImFontGlyph* glyph = font->FindGlyph(ImWchar(c));
    return glyph->Y1 - glyph->Y0;
  };
  const float capital = height('H');
  EXPECT_GT(height(0x6771), capital);
  EXPECT_GT(height(0x05d1), 0.7f * capital);
  EXPECT_GT(height(0xfe8e), 0.8f * capital) << "alef";
}

TEST_F(LetteringTest, LoadsNoMoreThanTheJobUses) {
  loadLettering(1);
  const int plain = ImGui::GetIO().Fonts->Fonts[0]->Glyphs.Size;
  loadLettering(1, {"北京"});
  EXPECT_LE(ImGui::GetIO().Fonts->Fonts[0]->Glyphs.Size, plain + 2);
}

TEST_F(LetteringTest, SaysWhichLettersAreLackingAndWhoHasThem) {
  loadLettering(1);  // as if there were no other typeface
  const auto lacking = lackingLetters({"北京", "בית"});
  ASSERT_TRUE(lacking);
  EXPECT_EQ(lacking->severity, model::Severity::Warning);
  EXPECT_NE(lacking->what.find("Chinese and Hebrew"), std::string::npos) << lacking->what;
  EXPECT_NE(lacking->instead.find("fonts-droid-fallback and fonts-noto-core"), std::string::npos);
  EXPECT_TRUE(lackingLetters({"\U0001F3E0"})) << "no letter of more than 16 bits";
}

TEST(JobWords, HaveEveryNameThatTheJobGives) {
  model::Job job;
  job.outline = {{0, 0}, {9, 0}, {9, 7}, {0, 7}};
  job.name = "家";
  job.storeys = {{"地", 0}, {"上", 2.7}};
  model::Opening opening;
  opening.name = "窓";
  opening.wall = "A-B";
  opening.from = "A";
  opening.at = 1;
  job.openings = {opening};
  job.site.benchMark = model::BenchMark{"釘", {0, 0}, 0.2};
  std::string all;
  for (const std::string& word : jobWords(model::buildModel(job))) all += word;
  for (const char* name : {"家", "地", "上", "窓", "釘"})
    EXPECT_NE(all.find(name), std::string::npos) << name;
}

// Two names of as many letters must not look the same, as they would if each letter were the box or
// the question mark that stands for what is lacking.
TEST(LetteredPicture, ShowsEachNameInItsOwnLetters) {
  std::string why;
  const auto offscreen = Offscreen::create(why);
  if (!offscreen) GTEST_SKIP() << why;
  const auto picture = [&](const std::string& name) {
    model::Job job = test_support::demoJob("smallest");
    job.name = name;
    const model::Model model = model::buildModel(job);
    PictureOptions options;
    options.overlays.titleBlock = true;
    Picturer picturer(model, *offscreen);
    const Image image = picturer.picture(options);
    EXPECT_FALSE(picturer.lackingLetters());
    return image.rgba;
  };
  for (const auto& [a, b, lost] : std::vector<std::array<const char*, 3>>{{"北京", "東海", "??"},
                                                                          {"과수", "나무", "??"},
                                                                          {"בית", "גנן", "???"},
                                                                          {"بيت", "دار", "???"}}) {
    const auto first = picture(a);
    EXPECT_NE(first, picture(b)) << a;
    EXPECT_NE(first, picture(lost)) << a;
  }
}

}  // namespace
}  // namespace viewer
