package org.brakewright.app.workspace;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.brakewright.buildfile.Beside;

/** The folder of a build file; remembers which files the build file named there, and what stood in them. */
final class Folder implements Beside {
    private static final long LARGEST = 64L << 20;

    private final Path path;
    private final Map<String, Found> named = new HashMap<>();

    private Folder(Path path) {
        this.path = path;
    }

    /** The folder in which a file lies. */
    static Folder of(Path file) {
        Path parent = file.toAbsolutePath().getParent();
        return new Folder(parent == null ? file.toAbsolutePath() : parent);
    }

    @Override
    public Found find(String name) {
        Found found = read(name);
        named.put(name, found);
        return found;
    }

    /** Whether a file that was named reads differently now. */
    boolean changed() {
        return named.entrySet().stream()
                .anyMatch(before -> !read(before.getKey()).equals(before.getValue()));
    }

    private Found read(String name) {
        try {
            Path relative = Path.of(name);
            if (relative.isAbsolute() || !path.resolve(relative).normalize().startsWith(path.normalize())) {
                return new Found.Missing("`" + name + "` lies outside the folder of the build file, which then could"
                        + " not be moved or sent as a whole");
            }
            Path file = path.resolve(relative);
            if (Files.isDirectory(file)) {
                return new Found.Missing("`" + name + "` is a folder");
            }
            if (Files.size(file) > LARGEST) {
                return new Found.Missing("`" + name + "` is larger than any log");
            }
            return new Found.There(ByteBuffer.wrap(Files.readAllBytes(file)));
        } catch (InvalidPathException e) {
            return new Found.Missing("`" + name + "` is no name of a file");
        } catch (NoSuchFileException e) {
            return new Found.Missing("there is no file `" + name + "` in the folder of the build file");
        } catch (IOException e) {
            return new Found.Missing("`" + name + "` cannot be read: " + e.getMessage());
        }
    }
}
