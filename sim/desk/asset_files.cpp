#include "sim/desk/asset_files.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>

namespace proofstand::desk {
namespace {

namespace fs = std::filesystem;

std::string setting(const char* name) {
  const char* value = std::getenv(name);
  return value == nullptr ? std::string() : std::string(value);
}

// places that may hold assets/ and scenarios/
std::vector<fs::path> roots() {
  std::vector<fs::path> out;
  std::error_code trouble;
  const fs::path program = fs::read_symlink("/proc/self/exe", trouble);
  if (!trouble) {
    for (fs::path folder = program.parent_path(); folder.has_relative_path(); folder = folder.parent_path()) {
      out.push_back(folder);
      out.push_back(folder / "share" / "proofstand");
    }
  }
  // a build folder outside the sources: the program is then started from them
  const fs::path here = fs::current_path(trouble);
  if (!trouble) {
    for (fs::path folder = here; folder.has_relative_path(); folder = folder.parent_path()) out.push_back(folder);
  }
  return out;
}

fs::path find_under_roots(const fs::path& name) {
  std::error_code trouble;
  for (const fs::path& root : roots()) {
    if (fs::exists(root / name, trouble)) return root / name;
  }
  return {};
}

std::string made_folder(const char* variable, const char* under_home) {
  fs::path base = setting(variable);
  if (base.empty()) {
    const std::string home = setting("HOME");
    if (home.empty()) return {};
    base = fs::path(home) / under_home;
  }
  std::error_code trouble;
  fs::create_directories(base / "proofstand", trouble);
  return trouble ? std::string() : (base / "proofstand").string();
}

}  // namespace

std::string find_asset(std::string_view name) { return find_under_roots(fs::path("assets") / name).string(); }

std::vector<std::string> list_assets(std::string_view folder, std::string_view ending) {
  std::vector<std::string> out;
  std::error_code trouble;
  for (const auto& entry : fs::directory_iterator(find_under_roots(fs::path("assets") / folder), trouble)) {
    if (entry.path().extension() == ending) out.push_back(entry.path().filename().string());
  }
  std::sort(out.begin(), out.end());
  return out;
}

std::string find_scenarios() { return find_under_roots("scenarios").string(); }

std::vector<std::string> list_scenarios(const std::string& folder) {
  std::vector<std::string> out;
  std::error_code trouble;
  for (const auto& entry : fs::recursive_directory_iterator(folder, trouble)) {
    const fs::path& path = entry.path();
    if (path.extension() == ".toml" && path.parent_path().filename() != "shared") out.push_back(path.string());
  }
  std::sort(out.begin(), out.end());
  return out;
}

std::string settings_folder() { return made_folder("XDG_CONFIG_HOME", ".config"); }

std::string attempts_folder() { return made_folder("XDG_DATA_HOME", ".local/share"); }

std::vector<std::string> list_attempts(const std::string& folder) {
  std::vector<std::pair<fs::file_time_type, std::string>> found;
  std::error_code trouble;
  for (const auto& entry : fs::directory_iterator(folder, trouble)) {
    if (entry.path().extension() == ".attempt")
      found.emplace_back(entry.last_write_time(trouble), entry.path().string());
  }
  std::sort(found.begin(), found.end(), [](const auto& a, const auto& b) { return b < a; });
  std::vector<std::string> out;
  for (auto& [when, path] : found) out.push_back(std::move(path));
  return out;
}

std::string find_typeface(bool bold) {
  std::error_code trouble;
  const char* name = bold ? "Inter-SemiBold.otf" : "Inter-Regular.otf";
  for (const char* folder : {"/usr/share/fonts/opentype/inter", "/usr/share/fonts/truetype/inter"}) {
    const fs::path path = fs::path(folder) / name;
    if (fs::exists(path, trouble)) return path.string();
    fs::path other = path;
    other.replace_extension(".ttf");
    if (fs::exists(other, trouble)) return other.string();
  }
  return {};
}

}  // namespace proofstand::desk
