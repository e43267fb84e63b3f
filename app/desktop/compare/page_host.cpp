#include "compare/page_host.h"

#include <QRandomGenerator>
#include <QTcpSocket>
#include <array>
#include <utility>

namespace tenter::desktop::compare {

namespace {

constexpr qsizetype mostHead = 64 * 1024;
constexpr qsizetype mostBody = 64 * 1024 * 1024;

QByteArray randomPath() {
    std::array<quint32, 4> words{};
    QRandomGenerator::system()->fillRange(words.data(), static_cast<qsizetype>(words.size()));
    return QByteArray(reinterpret_cast<const char*>(words.data()), sizeof(words)).toHex();
}

void send(QTcpSocket* socket, const QByteArray& status, const QByteArray& type, const QByteArray& body) {
    socket->write("HTTP/1.1 " + status + "\r\nContent-Type: " + type +
                  "\r\nContent-Length: " + QByteArray::number(body.size()) +
                  "\r\nCache-Control: no-store\r\nConnection: close\r\n\r\n");
    socket->write(body);
    socket->disconnectFromHost();
}

}  // namespace

PageHost::PageHost(QObject* parent) : QObject(parent), secret_(randomPath()) {
    connect(&server_, &QTcpServer::newConnection, this, [this] {
        while (QTcpSocket* socket = server_.nextPendingConnection()) {
            connect(socket, &QTcpSocket::readyRead, this, [this, socket] { readRequest(socket); });
            connect(socket, &QTcpSocket::disconnected, this, [this, socket] {
                received_.remove(socket);
                socket->deleteLater();
            });
        }
    });
}

PageHost::~PageHost() {
    // Open sockets emit signals while they are destroyed together with this object.
    for (QTcpSocket* socket : server_.findChildren<QTcpSocket*>())
        socket->disconnect(this);
}

bool PageHost::listen() {
    return server_.listen(QHostAddress::LocalHost);
}

void PageHost::addPage(const QByteArray& name, const QByteArray& html) {
    pages_[name] = html;
}

void PageHost::addAnswer(const QByteArray& name, std::function<QByteArray(const QByteArray&)> answer) {
    answers_[name] = std::move(answer);
}

QUrl PageHost::address(const QByteArray& name) const {
    return QUrl("http://127.0.0.1:" + QString::number(server_.serverPort()) + '/' + secret_ + '/' + name);
}

void PageHost::readRequest(QTcpSocket* socket) {
    QByteArray& received = received_[socket];
    received += socket->readAll();
    const qsizetype end = received.indexOf("\r\n\r\n");
    if (end < 0) {
        if (received.size() > mostHead) socket->abort();
        return;
    }
    Request request;
    request.body = end + 4;
    if (end > mostHead || !parse(received.left(end), request) || request.length > mostBody) {
        disconnect(socket, &QTcpSocket::readyRead, this, nullptr);
        send(socket, "400 Bad Request", "text/plain", "");
        return;
    }
    if (received.size() < request.body + request.length) return;
    // One request per connection: further data is ignored.
    disconnect(socket, &QTcpSocket::readyRead, this, nullptr);
    respond(socket, request, received.mid(request.body, request.length));
}

bool PageHost::parse(const QByteArray& head, Request& request) {
    const QList<QByteArray> lines = head.split('\n');
    const QList<QByteArray> start = lines.first().trimmed().split(' ');
    if (start.size() != 3) return false;
    request.method = start[0];
    request.path = start[1];
    for (qsizetype i = 1; i < lines.size(); ++i) {
        const qsizetype colon = lines[i].indexOf(':');
        if (colon < 0) return false;
        const QByteArray name = lines[i].left(colon).toLower();
        const QByteArray value = lines[i].mid(colon + 1).trimmed();
        if (name == "host") request.host = value;
        if (name != "content-length") continue;
        bool isNumber = false;
        request.length = value.toLongLong(&isNumber);
        if (!isNumber || request.length < 0) return false;
    }
    return true;
}

void PageHost::respond(QTcpSocket* socket, const Request& request, const QByteArray& body) {
    const QByteArray below = '/' + secret_ + '/';
    const QByteArray name = request.path.startsWith(below) ? request.path.mid(below.size()) : QByteArray();
    // Rejects requests with another host name, which a foreign page could direct to this server (DNS
    // rebinding).
    const bool ours = request.host == "127.0.0.1:" + QByteArray::number(server_.serverPort());
    if (ours && request.method == "GET" && pages_.contains(name))
        send(socket, "200 OK", "text/html; charset=utf-8", pages_[name]);
    else if (ours && request.method == "POST" && answers_.contains(name))
        send(socket, "200 OK", "application/json", answers_[name](body));
    else
        send(socket, "404 Not Found", "text/plain", "");
}

}  // namespace tenter::desktop::compare
