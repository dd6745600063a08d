#include "sim/scenario/source_files.h"

#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <memory>
#include <system_error>
#include <utility>

#include "sim/scenario/field_reader.h"
#include "sim/scenario/toml_text.h"

namespace proofstand::scenario {
namespace {

namespace fs = std::filesystem;

struct Close {
  void operator()(std::FILE* file) const { std::fclose(file); }
};

/// Is `inner` in `folder` or below it? Both canonical.
bool lies_within(const fs::path& inner, const fs::path& folder) {
  const auto split = std::mismatch(folder.begin(), folder.end(), inner.begin(), inner.end());
  return split.first == folder.end();
}

/// One loading: the files read so far.
class Loading {
 public:
  Loading(SourceTree& tree, base::Faults& faults) : tree_(tree), reading_{&tree.names, &faults} {}

  /// Reads and parses one file; nothing when it cannot be.
  std::optional<Node> parse(const std::string& path, const Spot& asked_from) {
    auto text = load_text(path);
    const bool main_file = tree_.names.empty();
    if (!text) {
      reading_.error("S01", asked_from, path + " " + text.error().what, text.error().instead);
      if (main_file) tree_.names.push_back(path);
      return std::nullopt;
    }
    const std::size_t file = tree_.names.size();
    tree_.names.push_back(path);
    tree_.texts.push_back(*text);
    auto node = parse_toml(*text, file);
    if (node) return *node;
    base::Error error = node.error();
    error.where = error.where.empty() ? path : path + ":" + error.where;
    reading_.faults->add(std::move(error));
    return std::nullopt;
  }

  /// The path of an include, when it may be read.
  std::optional<std::string> allowed(const std::string& from, const std::string& wanted, const Spot& at) {
    std::error_code trouble;
    const fs::path folder = fs::path(from).parent_path();
    const fs::path here = fs::weakly_canonical(folder.empty() ? fs::path(".") : folder, trouble);
    const fs::path shared = fs::weakly_canonical(here / ".." / "shared", trouble);
    const fs::path target = fs::weakly_canonical(here / wanted, trouble);
    const bool inside = !trouble && (lies_within(target, here) || lies_within(target, shared));
    if (fs::path(wanted).is_absolute() || !inside || target.extension() != ".toml") {
      reading_.error(
          "S02", at, "\"" + wanted + "\" may not be included",
          "include .toml files of the scenario's own folder or of the shared folder beside it, by a relative path");
      return std::nullopt;
    }
    return (folder / wanted).lexically_normal().string();
  }

  const Reading& reading() const { return reading_; }

 private:
  SourceTree& tree_;
  Reading reading_;
};

/// Entries of `from` that `into` does not have; tables are joined key by key.
void join(Node& into, Node from) {
  for (Member& member : from.members) {
    Node* there = into.find(member.key);
    if (there == nullptr) {
      into.members.push_back(std::move(member));
    } else if (there->is_table() && member.node.is_table()) {
      join(*there, std::move(member.node));
    }
  }
}

Node* find_rule(Node& rules, const std::string& id) {
  for (Member& member : rules.members) {
    const Node* name = member.node.find("id");
    if (name != nullptr && name->kind == NodeKind::Text && name->text == id) return &member.node;
  }
  return nullptr;
}

/// `leave_out = ["id"]` and `[adjust.id]` act on the shared rules.
void adjust_rules(Node& root, Node& shared, const Reading& reading) {
  FieldReader reader(reading, root, "");
  std::vector<std::string> left_out;
  std::vector<Spot> spots;
  reader.list("leave_out", left_out, &spots);
  for (std::size_t i = 0; i < left_out.size(); ++i) {
    const Node* rule = find_rule(shared, left_out[i]);
    if (rule == nullptr) {
      reading.error("S05", spots[i], "no included rule is called \"" + left_out[i] + "\"",
                    "name a rule of an included file, or take it out of leave_out");
      continue;
    }
    auto& list = shared.members;
    list.erase(std::remove_if(list.begin(), list.end(), [rule](const Member& m) { return &m.node == rule; }),
               list.end());
  }
  const Node* adjust = reader.table_at("adjust");
  if (adjust == nullptr) return;
  for (const Member& member : adjust->members) {
    Node* rule = find_rule(shared, member.key);
    if (rule == nullptr || !member.node.is_table()) {
      reading.error("S05", member.key_at, "no included rule is called \"" + member.key + "\"",
                    "write [adjust.ID] with the id of an included rule");
      continue;
    }
    for (const Member& change : member.node.members) set_member(*rule, change.key, change.node);
  }
}

}  // namespace

base::Result<std::string> load_text(const std::string& path) {
  std::error_code trouble;
  if (!fs::is_regular_file(path, trouble)) {
    return base::Error{"S01", path, "is not a file that can be read", "check the path", false};
  }
  const std::unique_ptr<std::FILE, Close> file(std::fopen(path.c_str(), "rb"));
  if (!file) return base::Error{"S01", path, "cannot be opened", "check its permissions", false};
  std::string text(kMostFileBytes + 1, '\0');
  const std::size_t got = std::fread(text.data(), 1, text.size(), file.get());
  if (std::ferror(file.get()) != 0) return base::Error{"S01", path, "cannot be read", "check the disk", false};
  if (got > kMostFileBytes)
    return base::Error{"S01", path, "is larger than 1 MiB", "split it, or check that it is a scenario at all", false};
  text.resize(got);
  return text;
}

SourceTree load_source_tree(const std::string& path, base::Faults& faults) {
  SourceTree tree;
  Loading loading(tree, faults);
  auto root = loading.parse(path, Spot{});
  if (!root) return tree;
  tree.complete = true;
  FieldReader reader(loading.reading(), *root, "");
  std::vector<std::string> wanted;
  std::vector<Spot> spots;
  reader.list("include", wanted, &spots);
  Node shared_rules;
  shared_rules.kind = NodeKind::List;
  Node rest = table_node(Spot{});
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    const auto allowed = loading.allowed(path, wanted[i], spots[i]);
    auto part = allowed ? loading.parse(*allowed, spots[i]) : std::nullopt;
    if (!part) {
      tree.complete = false;
      continue;
    }
    for (const char* key : {"include", "variant", "leave_out", "adjust"}) {
      if (const Node* there = part->find(key)) {
        loading.reading().error("S02", there->at, std::string("an included file cannot have \"") + key + "\"",
                                "move it to the scenario itself");
      }
    }
    if (Node* rules = part->find("rule")) {
      shared_rules.at = rules->at;
      for (Member& rule : rules->members) shared_rules.members.push_back(std::move(rule));
      remove_member(*part, "rule");
    }
    remove_member(*part, "format");
    join(rest, std::move(*part));
  }
  adjust_rules(*root, shared_rules, loading.reading());
  for (const char* key : {"include", "leave_out", "adjust"}) remove_member(*root, key);
  if (const Node* own = root->find("rule")) {
    for (const Member& rule : own->members) shared_rules.members.push_back(rule);
  }
  if (!shared_rules.members.empty()) set_member(*root, "rule", std::move(shared_rules));
  join(*root, std::move(rest));
  tree.root = std::move(*root);
  return tree;
}

}  // namespace proofstand::scenario
