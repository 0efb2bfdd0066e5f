package org.brakewright.app.web;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import org.brakewright.app.workspace.Workspace;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A server on a build file, asked over the wire. */
final class Served implements AutoCloseable {
    private final PageServer server;
    private final HttpClient client = HttpClient.newHttpClient();

    Served(Path file) throws IOException {
        if (!(Workspace.open(file) instanceof Workspace.Opening.Opened opened)) {
            throw new IllegalArgumentException("not usable: " + file);
        }
        server = PageServer.start(opened.workspace(), false, 0);
    }

    URI address(String path) {
        return URI.create(server.address()).resolve(path);
    }

    int port() {
        return address("/").getPort();
    }

    HttpResponse<String> get(String path, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(address(path));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return send(request.build());
    }

    HttpResponse<byte[]> bytes(String path) {
        try {
            return client.send(HttpRequest.newBuilder(address(path)).build(), BodyHandlers.ofByteArray());
        } catch (IOException | InterruptedException broken) {
            throw new IllegalStateException(broken);
        }
    }

    HttpResponse<String> post(String path, String json) {
        return post(path, json, "Content-Type", "application/json");
    }

    HttpResponse<String> post(String path, String body, String... headers) {
        return send(HttpRequest.newBuilder(address(path))
                .headers(headers)
                .POST(BodyPublishers.ofString(body))
                .build());
    }

    JsonNode page() {
        return JsonMapper.shared().readTree(get("/api/page?units=metric").body());
    }

    int revision() {
        return page().get("revision").asInt();
    }

    /** Sends one edit on top of the newest state. */
    HttpResponse<String> edit(String path, String text) {
        return post("/api/edit", edit(revision(), path, text));
    }

    static String edit(int revision, String path, String text) {
        return "{\"revision\":%d,\"units\":\"metric\",\"edits\":[{\"path\":\"%s\",\"text\":\"%s\"}]}"
                .formatted(revision, path, text);
    }

    private HttpResponse<String> send(HttpRequest request) {
        try {
            return client.send(request, BodyHandlers.ofString());
        } catch (IOException e) {
            throw new AssertionError("no answer to " + request, e);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    @Override
    public void close() {
        client.close();
        server.close();
    }
}
