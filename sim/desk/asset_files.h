// Files that come with the program, and the folders that a person's own things go to: found whatever the working
// directory.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace proofstand::desk {

/// Path of a file under assets/, sought beside the program, above it, and where the sources lay when it was built;
/// empty when it is nowhere.
std::string find_asset(std::string_view name);
/// Names of the files with this ending in a folder of assets/, in order.
std::vector<std::string> list_assets(std::string_view folder, std::string_view ending);
/// Path of the folder with the shipped scenarios; empty when it is nowhere.
std::string find_scenarios();
/// Scenario files under a folder, in order.
std::vector<std::string> list_scenarios(const std::string& folder);

/// Folder for what is kept from day to day (made when missing): settings. Empty when there is none to be had.
std::string settings_folder();
/// Folder for attempts that were begun without naming a file (made when missing).
std::string attempts_folder();
/// Attempt files in a folder, newest first.
std::vector<std::string> list_attempts(const std::string& folder);
/// A typeface file of the system: the text face of cards, upright or bold; empty when the package is missing.
std::string find_typeface(bool bold);

}  // namespace proofstand::desk
