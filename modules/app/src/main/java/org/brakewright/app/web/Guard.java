package org.brakewright.app.web;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import io.javalin.http.UnsupportedMediaTypeResponse;
import org.jspecify.annotations.Nullable;

/**
 * Lets only this machine's own page in. A foreign page in the same browser could otherwise reach the loopback address,
 * by its own requests or by a name that resolves to it: so Host and Origin must be ours, and nothing is shared across
 * origins.
 */
final class Guard {
    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; "
                    + "font-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    private volatile int port;

    void servesOn(int servedPort) {
        this.port = servedPort;
    }

    void check(Context context) {
        if (!isOurs(context.header("Host"))) {
            throw new ForbiddenResponse("This page answers only to its own address on this machine.");
        }
        String origin = context.header("Origin");
        if (origin != null && !(origin.startsWith("http://") && isOurs(origin.substring("http://".length())))) {
            throw new ForbiddenResponse("Another page asked; only this page may.");
        }
        if (context.method().equals(HandlerType.POST) && !isJson(context.header("Content-Type"))) {
            throw new UnsupportedMediaTypeResponse("Send JSON.");
        }
        context.header("Content-Security-Policy", POLICY);
        context.header("X-Content-Type-Options", "nosniff");
        context.header("Referrer-Policy", "no-referrer");
        context.header("Cross-Origin-Opener-Policy", "same-origin");
        context.header("Cross-Origin-Resource-Policy", "same-origin");
        context.header("Cache-Control", "no-cache");
    }

    private boolean isOurs(@Nullable String host) {
        return host != null && (host.equals("127.0.0.1:" + port) || host.equals("localhost:" + port));
    }

    private static boolean isJson(@Nullable String contentType) {
        return contentType != null && contentType.startsWith("application/json");
    }
}
