// SPDX-License-Identifier: GPL-3.0-or-later
#include "specdb/files/write_file.hpp"

#include <cerrno>
#include <cstdio>
#include <string>
#include <system_error>

#include <fcntl.h>
#include <fmt/format.h>
#include <sys/stat.h>
#include <unistd.h>

#include "core/text/plain_text.hpp"

namespace clampwright::specdb {

namespace {

namespace fs = std::filesystem;

Refusal about(Trouble trouble, const char* code, std::string message, const fs::path& path, std::string hint) {
  return refuse(trouble, code, std::move(message), path.string(), std::move(hint), "--output");
}

Refusal cannot_create(int error, const fs::path& path) {
  const bool forbidden = error == EACCES || error == EPERM || error == EROFS;
  return about(forbidden ? Trouble::no_permission : Trouble::cannot_create,
               forbidden ? "no-permission" : "cannot-create",
               fmt::format("the file cannot be made: {}", std::generic_category().message(error)), path,
               "name a file in a folder that is there and that you may write to");
}

Refusal there_already(const fs::path& path) {
  return about(Trouble::cannot_create, "cannot-create", "there is such a file already", path,
               "name another file, or add --replace to write over it");
}

Refusal failed(int error, const fs::path& path) {
  return about(Trouble::input_output, "input-output",
               fmt::format("the file cannot be written: {}", std::generic_category().message(error)), path,
               "look after the disk; nothing has changed");
}

// A new file that is gone again unless it was put in its place.
class NewFile {
 public:
  explicit NewFile(const fs::path& beside) {
    for (int attempt = 0; attempt < 100 && descriptor_ < 0; ++attempt) {
      name_ = fmt::format("{}.{}-{}.part", beside.string(), ::getpid(), attempt);
      descriptor_ = ::open(name_.c_str(), O_CREAT | O_EXCL | O_WRONLY | O_CLOEXEC, 0666);
      if (descriptor_ < 0 && errno != EEXIST) break;
    }
    error_ = descriptor_ < 0 ? errno : 0;
    exists_ = descriptor_ >= 0;
  }
  ~NewFile() {
    if (descriptor_ >= 0) (void)::close(descriptor_);
    if (exists_) (void)::unlink(name_.c_str());
  }
  NewFile(const NewFile&) = delete;
  NewFile& operator=(const NewFile&) = delete;

  // 0, or the error number.
  [[nodiscard]] int error() const { return error_; }

  [[nodiscard]] int write(std::string_view bytes) const {
    while (!bytes.empty()) {
      const ssize_t written = ::write(descriptor_, bytes.data(), bytes.size());
      if (written < 0 && errno == EINTR) continue;
      if (written < 0) return errno;
      bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return 0;
  }

  [[nodiscard]] int finish(const struct stat* old) {
    if (old != nullptr) (void)::fchmod(descriptor_, old->st_mode & 07777);
    int error = ::fsync(descriptor_) == 0 ? 0 : errno;
    if (::close(descriptor_) != 0 && error == 0) error = errno;
    descriptor_ = -1;
    return error;
  }

  [[nodiscard]] int put_in_place(const fs::path& path, IfThere if_there) {
    int result = ::renameat2(AT_FDCWD, name_.c_str(), AT_FDCWD, path.c_str(),
                             if_there == IfThere::refuse ? RENAME_NOREPLACE : 0U);
    // A file system that cannot promise it: whether a file is there has been looked at before.
    if (result != 0 && (errno == EINVAL || errno == ENOSYS)) result = ::rename(name_.c_str(), path.c_str());
    if (result != 0) return errno;
    exists_ = false;
    return 0;
  }

 private:
  std::string name_;
  int descriptor_ = -1;
  int error_ = 0;
  bool exists_ = false;
};

} // namespace

Result<void> write_file(const fs::path& path, std::string_view bytes, IfThere if_there) {
  std::error_code ignored;
  fs::path place = path;
  if (fs::is_symlink(path, ignored)) {
    place = fs::weakly_canonical(path, ignored);
    if (ignored) return cannot_create(ignored.value(), path);
  }
  struct stat old {};
  const bool is_there = ::stat(place.c_str(), &old) == 0;
  if (!is_there && errno != ENOENT) return cannot_create(errno, path);
  if (is_there && !S_ISREG(old.st_mode))
    return about(Trouble::cannot_create, "cannot-create", "that is no plain file", path,
                 "name a file; without --output the answer goes to standard output");
  if (is_there && if_there == IfThere::refuse) return there_already(path);

  NewFile file(place);
  if (file.error() != 0) return cannot_create(file.error(), path);
  if (const int error = file.write(bytes); error != 0) return failed(error, path);
  if (const int error = file.finish(is_there ? &old : nullptr); error != 0) return failed(error, path);
  if (const int error = file.put_in_place(place, if_there); error != 0)
    return error == EEXIST ? there_already(path) : failed(error, path);
  return {};
}

} // namespace clampwright::specdb
