package org.brakewright.app.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.nio.file.Path;
import java.util.List;

/** The system's browser, driven without a window. Another place: {@code -Dbrakewright.chromium=PATH}. */
final class Chromium implements AutoCloseable {
    private static final Path EXECUTABLE = Path.of(System.getProperty("brakewright.chromium", "/usr/bin/chromium"));
    private static final List<String> ARGUMENTS = List.of(
            "--use-angle=swiftshader",
            "--enable-unsafe-swiftshader",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    private final Playwright playwright = Playwright.create();
    private final Browser browser = playwright
            .chromium()
            .launch(new BrowserType.LaunchOptions()
                    .setExecutablePath(EXECUTABLE)
                    .setChromiumSandbox(false)
                    .setArgs(ARGUMENTS));

    Browser browser() {
        return browser;
    }

    @Override
    public void close() {
        playwright.close();
    }
}
