package org.brakewright.app.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.brakewright.app.Cars;
import org.brakewright.app.web.PageServer;
import org.brakewright.app.workspace.Workspace;

/** One browser tab on a build file, with everything that the browser complained about. */
final class Bench implements AutoCloseable {
    private final BrowserContext context;
    private final Page page;
    private final List<String> complaints = new CopyOnWriteArrayList<>();
    private final List<String> requests = new CopyOnWriteArrayList<>();

    /** Size and colours of a screen. */
    record Screen(int width, int height, ColorScheme colours) {
        static final Screen DESKTOP = new Screen(1280, 900, ColorScheme.LIGHT);
        static final Screen PHONE = new Screen(360, 740, ColorScheme.LIGHT);
    }

    Bench(Browser browser, String address, Screen screen) {
        context = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(screen.width(), screen.height())
                .setColorScheme(screen.colours())
                .setReducedMotion(ReducedMotion.REDUCE));
        page = context.newPage();
        page.onConsoleMessage(message -> {
            if (message.type().equals("error") || message.type().equals("warning")) {
                complaints.add(message.text());
            }
        });
        page.onPageError(complaints::add);
        page.onRequest(request -> requests.add(request.url()));
        page.navigate(address);
        page.locator("#headline").waitFor();
    }

    /** A server on a build file. */
    static PageServer serve(Path file) throws IOException {
        if (!(Workspace.open(file) instanceof Workspace.Opening.Opened opened)) {
            throw new IllegalArgumentException("not usable: " + file);
        }
        return PageServer.start(opened.workspace(), false, 0);
    }

    /** A copy of the hill-climb car. */
    static Path car(Path folder) {
        return Cars.copy(folder, Cars.text("hill-climber"));
    }

    Page page() {
        return page;
    }

    Locator at(String selector) {
        return page.locator(selector);
    }

    /** The box of an input, its section opened. */
    Locator field(String path) {
        String id = "#field-" + path.replaceAll("[^a-zA-Z0-9_]", "-");
        page.evalOnSelector(id, "box => box.closest('details').open = true");
        return page.locator(id);
    }

    /** The four headline values. */
    List<String> headline() {
        return page.locator("#headline .card-value").allInnerTexts();
    }

    String verdict() {
        return page.locator(".verdict-line").innerText();
    }

    void openEverything() {
        page.evaluate("document.querySelectorAll('details').forEach(part => part.open = true)");
    }

    /** Errors and warnings of the console, and uncaught ones. */
    List<String> complaints() {
        return complaints;
    }

    /** Everything that the page asked for. */
    List<String> requests() {
        return requests;
    }

    @Override
    public void close() {
        context.close();
    }
}
