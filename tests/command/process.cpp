#include "process.h"

#include <fcntl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <iterator>

#include "../network.h"

namespace tenter::tests {

std::size_t Finished::errorLines() const {
    return static_cast<std::size_t>(std::ranges::count(err, '\n'));
}

Finished tenterCli(const std::vector<std::string>& arguments, const std::filesystem::path& in) {
    const Folder folder;
    const std::string out = folder.file("out");
    const std::string err = folder.file("err");
    std::vector<std::string> words{TENTER_CLI};
    words.insert(words.end(), arguments.begin(), arguments.end());
    std::vector<char*> pointers;
    for (std::string& word : words)
        pointers.push_back(word.data());
    pointers.push_back(nullptr);
    const pid_t child = fork();
    if (child == 0) {
        // The command line needs no display.
        if (!in.empty() && chdir(in.c_str()) != 0) _exit(126);
        unsetenv("DISPLAY");
        dup2(open("/dev/null", O_RDONLY), STDIN_FILENO);
        // A system without such filters proves nothing, which the test of them shows.
        forbidNetwork();
        dup2(open(out.c_str(), O_WRONLY | O_CREAT, 0600), STDOUT_FILENO);
        dup2(open(err.c_str(), O_WRONLY | O_CREAT, 0600), STDERR_FILENO);
        execv(TENTER_CLI, pointers.data());
        _exit(127);
    }
    int status = 0;
    rusage used{};
    wait4(child, &status, 0, &used);
    const auto seconds = [](const timeval& time) {
        return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) * 1e-6;
    };
    return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, contentOf(out), contentOf(err),
            seconds(used.ru_utime) + seconds(used.ru_stime), static_cast<double>(used.ru_maxrss) / 1024};
}

Folder::Folder() {
    std::string name = (std::filesystem::temp_directory_path() / "tenter-command-XXXXXX").string();
    path_ = mkdtemp(name.data()) == nullptr ? "" : name;
}

Folder::~Folder() {
    std::error_code error;
    std::filesystem::remove_all(path_, error);
}

std::string Folder::write(const std::string& name, const std::string& content) const {
    std::ofstream(path_ / name, std::ios::binary) << content;
    return file(name);
}

std::vector<std::string> Folder::names() const {
    std::vector<std::string> out;
    for (const auto& entry : std::filesystem::directory_iterator(path_))
        out.push_back(entry.path().filename().string());
    std::ranges::sort(out);
    return out;
}

std::string contentOf(const std::string& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

}  // namespace tenter::tests
