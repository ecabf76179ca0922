#include "viewer/gl/picture_ink.h"

#include <backends/imgui_impl_opengl3.h>
#include <imgui.h>

#include "viewer/fonts.h"

namespace viewer {

namespace {

// Makes a context current, and the former one again at the end.
class Current {
 public:
  explicit Current(ImGuiContext* context) : before_(ImGui::GetCurrentContext()) {
    ImGui::SetCurrentContext(context);
  }
  ~Current() { ImGui::SetCurrentContext(before_); }
  Current(const Current&) = delete;
  Current& operator=(const Current&) = delete;

 private:
  ImGuiContext* before_;
};

}  // namespace

PictureInk::PictureInk(float scale, const std::vector<std::string>& samples) : scale_(scale) {
  ImGuiContext* before = ImGui::GetCurrentContext();
  context_ = ImGui::CreateContext();
  ImGui::SetCurrentContext(before);
  const Current current(context_);
  ImGui::GetIO().IniFilename = nullptr;  // a picture leaves nothing behind
  ImGui::GetIO().LogFilename = nullptr;
  ImGui_ImplOpenGL3_Init("#version 330 core");
  loadLettering(scale, samples);
  lacking_ = lackingLetters(samples);
}

PictureInk::~PictureInk() {
  {
    const Current current(context_);
    ImGui_ImplOpenGL3_Shutdown();
  }
  ImGui::DestroyContext(context_);
}

void PictureInk::lay(int width, int height, const std::function<void()>& draw) {
  const Current current(context_);
  ImGuiIO& io = ImGui::GetIO();
  io.DisplaySize = ImVec2(static_cast<float>(width), static_cast<float>(height));
  io.DeltaTime = 1.0f / 60;
  io.MousePos = ImVec2(-1, -1);
  ImGui_ImplOpenGL3_NewFrame();
  ImGui::NewFrame();
  draw();
  ImGui::Render();
  ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
}

}  // namespace viewer
