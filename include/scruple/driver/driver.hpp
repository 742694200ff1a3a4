// SPDX-License-Identifier: MIT
// One call a job: read a folder, check it, write a file. The command line and any other front
// end call these; nothing here prints or exits.
#pragma once

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "scruple/check/check.hpp"
#include "scruple/plan/card.hpp"
#include "scruple/syntax/tree.hpp"

namespace scruple::driver {

/// What could not be read or written, in words.
struct Trouble {
    std::string message;
};

/// A workspace past one of these is refused, so that a folder that was named by mistake does not fill the memory.
inline constexpr std::size_t most_entries = 100'000;   ///< files and folders, whatever they are called
inline constexpr std::size_t most_bytes = 128u << 20;  ///< of all recipe files together
inline constexpr std::size_t most_lines = 4'000'000;

/// All `.scruple` files under the folder, sorted by path, as people would name them. Links to folders
/// are not followed; hidden files and folders and those called `build` are passed over.
[[nodiscard]] std::variant<std::vector<std::filesystem::path>, Trouble> recipe_files(
    const std::filesystem::path& folder);

/// One file as it was read. With a fault (not UTF-8, too large) nothing in it may be parsed, and
/// `source` holds no more than what stands before the fault. The fault's file id is for the caller to set.
struct RecipeFile {
    text::Source source;
    std::optional<diagnostics::Diagnostic> fault;
};
[[nodiscard]] std::variant<RecipeFile, Trouble> read_recipe_file(const std::filesystem::path& path);
/// The same of bytes that came from elsewhere.
[[nodiscard]] RecipeFile recipe_file_of(text::Source source);

/// Whether a file or folder of this name is no business of a workspace: hidden ones, and `build`.
[[nodiscard]] bool passed_over(std::string_view name);

/// Whole, or in passing, for whoever asks what is wrong and nothing more (check::Workspace::outlines): files of recipes
/// alone have no trees then, and the model has no more of them than names.
enum class Load : std::uint8_t { whole, in_passing };

/// A workspace read and checked. The library that is built in comes first among the sources, then
/// the files, then what was asked. May be moved; the model's views follow.
struct Loaded {
    std::vector<text::Source> sources;
    std::vector<syntax::SharedTree> trees;  ///< empty ones of files that were checked in passing
    std::size_t built_in = 0;
    std::size_t asked = 0;  ///< index of the first source that was asked
    check::Checked checked;
};

/// Reads and checks all recipe files of a folder, side by side on the machine's cores. A file that cannot be
/// taken is a diagnostic, not a Trouble. `asked` are further sources, recipe text that is in no file,
/// for a caller that has a question in the language itself (such as an amount on a command line).
[[nodiscard]] std::variant<Loaded, Trouble> load(const std::filesystem::path& folder,
                                                 std::vector<text::Source> asked = {}, Load how = Load::whole);
/// The same of files that have been read.
[[nodiscard]] Loaded load(std::vector<RecipeFile> files, std::vector<text::Source> asked = {}, Load how = Load::whole);

/// Which version of a recipe it is: the SHA-256 (FIPS 180-4) of its text from its heading to the next recipe's or other
/// block's, line ends as LF and blanks at the ends of lines left out; 64 hexadecimal digits.
[[nodiscard]] std::string digest_of(const Loaded& loaded, check::Id recipe);

/// The warnings that stand in the lines of a solution and in its recipe's own, and those about what a process carries
/// into it or out of it: they go on its card.
[[nodiscard]] std::vector<plan::Warning> warnings_for(const Loaded& loaded, check::Id section);

/// The errors that stand there and are about a solution whose lines are all read: what must not meet, what is expected.
[[nodiscard]] std::vector<plan::Warning> judgements_for(const Loaded& loaded, check::Id section);

/// Of each section, whether all lines of it, of its recipe and of the solutions that it is made of are read.
[[nodiscard]] std::vector<bool> are_read(const Loaded& loaded);

/// The advice that stands there and is for whoever keeps the bottle: it goes among the notes of the card.
[[nodiscard]] std::vector<std::string> notes_for(const Loaded& loaded, check::Id section);

/// A file's worth of text: whole or not at all (written beside, synced, renamed). Keeps the mode of a
/// file that was there, and writes to where a link leads. SIGINT, SIGTERM and SIGHUP wait until it is done. What a
/// killed process has left behind of such writing in that folder is taken away.
[[nodiscard]] std::optional<Trouble> write_whole(const std::filesystem::path& path, std::string_view text);

/// The name of a file in its folder, and what is in it.
using NamedText = std::pair<std::string, std::string>;

/// Each as write_whole does it, in this order, up to the first that cannot be written. A folder that is not there is
/// made.
[[nodiscard]] std::optional<Trouble> fill_folder(const std::filesystem::path& folder,
                                                 const std::vector<NamedText>& files);

/// A file that one call alone changes: others that want to hold it wait until this goes away, also where it is written
/// whole meanwhile, and also where the process is killed.
class Hold {
  public:
    struct Locked;
    explicit Hold(std::unique_ptr<Locked> locked);
    Hold(Hold&&) noexcept;
    Hold& operator=(Hold&&) noexcept;
    ~Hold();

  private:
    std::unique_ptr<Locked> locked_;
};

/// What is read of the file from now on is what the last one who held it has written.
[[nodiscard]] std::variant<Hold, Trouble> hold(const std::filesystem::path& path);

/// The embedded library: paths such as `built-in/alkalis.scruple`, and their text.
[[nodiscard]] const std::vector<text::Source>& library();

}  // namespace scruple::driver
