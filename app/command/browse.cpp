#include "browse.h"

#include <arpa/inet.h>
#include <fcntl.h>
#include <netinet/in.h>
#include <poll.h>
#include <sys/prctl.h>
#include <sys/socket.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <random>
#include <string_view>
#include <vector>

namespace tenter::command {

namespace {

namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

constexpr std::chrono::seconds patience{60};
constexpr std::size_t mostRequest = 64U << 20U;

/// A file descriptor that is closed at the end.
class Descriptor {
public:
    explicit Descriptor(int number) : number_(number) {}
    ~Descriptor() {
        if (number_ >= 0) ::close(number_);
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    [[nodiscard]] int number() const { return number_; }

private:
    int number_;
};

/// An empty folder that is removed at the end.
class Folder {
public:
    Folder() {
        std::string name = (fs::temp_directory_path() / "tenter-browser-XXXXXX").string();
        if (::mkdtemp(name.data()) != nullptr) path_ = name;
    }
    ~Folder() {
        // A helper process that is just ending may still write files.
        std::error_code error;
        for (int tries = 0; tries < 20 && !path_.empty(); ++tries) {
            fs::remove_all(path_, error);
            if (!error) return;
            ::usleep(25'000);
        }
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    [[nodiscard]] const fs::path& path() const { return path_; }

private:
    fs::path path_;
};

/// The browser's process group, which ends with this object.
class Process {
public:
    Process(const std::string& program, const std::vector<std::string>& words) {
        std::vector<char*> arguments{const_cast<char*>(program.c_str())};
        for (const std::string& word : words)
            arguments.push_back(const_cast<char*>(word.c_str()));
        arguments.push_back(nullptr);
        pid_ = ::fork();
        if (pid_ != 0) return;
        ::setpgid(0, 0);
        ::prctl(PR_SET_PDEATHSIG, SIGKILL);
        const int nothing = ::open("/dev/null", O_RDWR);
        for (const int standard : {0, 1, 2})
            ::dup2(nothing, standard);
        ::execv(program.c_str(), arguments.data());
        ::_exit(127);
    }
    ~Process() {
        if (pid_ <= 0) return;
        ::kill(-pid_, SIGKILL);
        ::kill(pid_, SIGKILL);
        ::waitpid(pid_, nullptr, 0);
    }
    Process(const Process&) = delete;
    Process& operator=(const Process&) = delete;
    [[nodiscard]] bool runs() const { return pid_ > 0 && ::waitpid(pid_, nullptr, WNOHANG) == 0; }

private:
    pid_t pid_ = -1;
};

std::string randomWord() {
    std::random_device random;
    std::string word;
    for (int i = 0; i < 4; ++i)
        word += std::to_string(random());
    return word;
}

void send(int connection, std::string_view status, std::string_view type, std::string_view body) {
    std::string answer = "HTTP/1.1 " + std::string(status) + "\r\nContent-Type: " + std::string(type) +
                         "\r\nContent-Length: " + std::to_string(body.size()) +
                         "\r\nCache-Control: no-store\r\nConnection: close\r\n\r\n" + std::string(body);
    for (std::string_view rest = answer; !rest.empty();) {
        const ssize_t sent = ::send(connection, rest.data(), rest.size(), MSG_NOSIGNAL);
        if (sent <= 0) return;
        rest.remove_prefix(static_cast<std::size_t>(sent));
    }
}

bool waitFor(int descriptor, Clock::time_point until) {
    const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(until - Clock::now()).count();
    pollfd one{descriptor, POLLIN, 0};
    return left > 0 && ::poll(&one, 1, static_cast<int>(left)) > 0;
}

/// The request on a connection: its head and body. Empty if it does not come.
std::string requestOn(int connection, Clock::time_point until) {
    std::string request;
    std::array<char, 65536> buffer{};
    std::size_t whole = mostRequest;
    while (request.size() < whole && request.size() < mostRequest && waitFor(connection, until)) {
        const ssize_t count = ::recv(connection, buffer.data(), buffer.size(), 0);
        if (count <= 0) break;
        request.append(buffer.data(), static_cast<std::size_t>(count));
        const std::size_t end = request.find("\r\n\r\n");
        if (end == std::string::npos || whole != mostRequest) continue;
        whole = end + 4;
        for (const char* name : {"\r\nContent-Length: ", "\r\ncontent-length: "})
            if (const std::size_t at = request.find(name); at < end)
                whole += std::strtoul(request.c_str() + at + 18, nullptr, 10);
    }
    return request;
}

/// Serves one page and waits for what it posts.
class Server {
public:
    explicit Server(const std::string& html)
        : html_(html), listener_(::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0)) {
        sockaddr_in address{};
        address.sin_family = AF_INET;
        address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
        socklen_t size = sizeof(address);
        auto* const plain = reinterpret_cast<sockaddr*>(&address);
        if (listener_.number() < 0 || ::bind(listener_.number(), plain, size) != 0 ||
            ::listen(listener_.number(), 16) != 0 || ::getsockname(listener_.number(), plain, &size) != 0)
            return;
        host_ = "127.0.0.1:" + std::to_string(ntohs(address.sin_port));
    }

    [[nodiscard]] bool listens() const { return !host_.empty(); }
    [[nodiscard]] std::string address() const { return "http://" + host_ + "/" + secret_ + "/page"; }

    std::optional<std::string> posted(const Process& process) {
        const Clock::time_point end = Clock::now() + patience;
        while (Clock::now() < end && process.runs()) {
            if (!waitFor(listener_.number(), std::min(end, Clock::now() + std::chrono::milliseconds(200))))
                continue;
            const Descriptor connection(::accept4(listener_.number(), nullptr, nullptr, SOCK_CLOEXEC));
            if (connection.number() < 0) continue;
            const std::string request = requestOn(connection.number(), end);
            // Rejects requests with another host name, which a foreign page could direct to this server.
            const bool ours = request.find("ost: " + host_ + "\r\n") != std::string::npos;
            if (ours && request.starts_with("GET /" + secret_ + "/page ")) {
                send(connection.number(), "200 OK", "text/html; charset=utf-8", html_);
            } else if (ours && request.starts_with("POST /" + secret_ + "/result ")) {
                send(connection.number(), "200 OK", "text/plain", "");
                return request.substr(request.find("\r\n\r\n") + 4);
            } else {
                send(connection.number(), "404 Not Found", "text/plain", "");
            }
        }
        return std::nullopt;
    }

private:
    const std::string& html_;
    Descriptor listener_;
    std::string host_;
    std::string secret_ = randomWord();
};

std::vector<std::string> wordsFor(const std::string& program, const fs::path& folder,
                                  const std::string& address) {
    if (fs::path(program).filename().string().starts_with("firefox")) {
        std::ofstream(folder / "user.js") << R"(user_pref("app.update.enabled", false);
user_pref("browser.aboutwelcome.enabled", false);
user_pref("browser.shell.checkDefaultBrowser", false);
user_pref("browser.startup.homepage_override.mstone", "ignore");
user_pref("datareporting.policy.dataSubmissionEnabled", false);
user_pref("layout.css.devPixelsPerPx", "1.0");
user_pref("network.captive-portal-service.enabled", false);
user_pref("network.connectivity-service.enabled", false);
user_pref("network.proxy.type", 0);
)";
        return {"--headless", "--no-remote", "--profile", folder.string(), address};
    }
    std::vector<std::string> words{"--headless=new",
                                   "--user-data-dir=" + folder.string(),
                                   "--no-first-run",
                                   "--no-proxy-server",
                                   "--disable-sync",
                                   "--disable-background-networking",
                                   "--disable-component-update",
                                   "--disable-default-apps",
                                   "--force-device-scale-factor=1",
                                   "--password-store=basic"};
    // Chromium's sandbox refuses to run as root.
    if (::geteuid() == 0) words.emplace_back("--no-sandbox");
    words.push_back(address);
    return words;
}

}  // namespace

std::string installedBrowser() {
    const char* search = std::getenv("PATH");
    const std::string paths = search == nullptr ? "" : search;
    for (const char* name : {"chromium", "chromium-browser", "google-chrome", "firefox", "firefox-esr"}) {
        for (std::size_t begin = 0; begin <= paths.size();) {
            const std::size_t end = std::min(paths.find(':', begin), paths.size());
            const fs::path program = fs::path(paths.substr(begin, end - begin)) / name;
            if (::access(program.c_str(), X_OK) == 0) return program.string();
            begin = end + 1;
        }
    }
    return {};
}

std::optional<std::string> browse(const std::string& program, const std::string& html) {
    const Folder folder;
    Server server(html);
    if (folder.path().empty() || !server.listens()) return std::nullopt;
    const Process process(program, wordsFor(program, folder.path(), server.address()));
    return server.posted(process);
}

}  // namespace tenter::command
