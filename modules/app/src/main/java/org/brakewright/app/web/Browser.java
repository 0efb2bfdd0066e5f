package org.brakewright.app.web;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** Opens the browser of this machine. */
public final class Browser {
    private Browser() {}

    /** Opens an address; false when nothing here can. */
    public static boolean open(String address) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        List<String> opener = system.contains("mac")
                ? List.of("open", address)
                : system.contains("win")
                        ? List.of("rundll32", "url.dll,FileProtocolHandler", address)
                        : List.of("xdg-open", address);
        if (system.contains("linux") && System.getenv("DISPLAY") == null && System.getenv("WAYLAND_DISPLAY") == null) {
            return false;
        }
        try {
            new ProcessBuilder(opener)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
