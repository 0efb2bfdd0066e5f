package org.brakewright.app.web;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.brakewright.app.page.SheetsMaker;
import org.brakewright.app.report.Json;
import org.brakewright.app.words.FindingWords;
import org.brakewright.app.words.Show;
import org.brakewright.app.words.UnitSystem;
import org.brakewright.app.workspace.Workspace;
import org.brakewright.drawing.page.Paper;
import org.brakewright.sheets.Issue;
import org.brakewright.sheets.Sheet;
import org.brakewright.sheets.SheetFiles;
import org.brakewright.sheets.Sheets;
import org.jspecify.annotations.Nullable;

/** Answers with the list of sheets of the build file as it stands, and with each of their files, drawn when asked for. */
final class SheetHandler {
    private static final int LONGEST_NAME = 60;

    /** Name of a bundle of all files for one paper. */
    private static final Pattern BUNDLE = Pattern.compile("all-(a4|letter)\\.zip");

    private static final Pattern FILE = Pattern.compile("(?<key>.+?)(-(?<paper>a4|letter)\\.pdf|\\.svg|\\.dxf)");
    private static final Map<String, String> TYPES =
            Map.of("pdf", "application/pdf", "svg", "image/svg+xml", "dxf", "image/vnd.dxf", "zip", "application/zip");

    private final Workspace workspace;

    SheetHandler(Workspace workspace) {
        this.workspace = workspace;
    }

    void list(Context context) {
        Workspace.Standing standing = workspace.standing();
        context.contentType("application/json")
                .result(Json.write(
                        new SheetsMaker(show(context)).make(sheets(standing, context), standing.revision())));
    }

    void file(Context context) throws IOException {
        String name = context.pathParam("file");
        List<Sheet> sheets = sheets(workspace.standing(), context);
        Matcher bundle = BUNDLE.matcher(name);
        send(
                context,
                name,
                bundle.matches() ? zip(SheetFiles.of(sheets, List.of(paper(bundle.group(1))))) : one(sheets, name));
    }

    private static byte[] one(List<Sheet> sheets, String name) {
        Matcher file = FILE.matcher(name);
        if (!file.matches()) {
            throw missing(name);
        }
        String paper = file.group("paper");
        Sheet sheet = sheets.stream()
                .filter(each -> each.key().equals(file.group("key")))
                .findFirst()
                .orElseThrow(() -> missing(name));
        Map<String, byte[]> files = SheetFiles.of(List.of(sheet), paper == null ? List.of() : List.of(paper(paper)));
        byte[] bytes = files.get(name);
        if (bytes == null) {
            throw missing(name);
        }
        return bytes;
    }

    private static byte[] zip(Map<String, byte[]> files) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue());
            }
        }
        return bytes.toByteArray();
    }

    private static void send(Context context, String name, byte[] bytes) {
        String kind = name.substring(name.lastIndexOf('.') + 1);
        if (!kind.equals("svg")) {
            context.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
        }
        context.contentType(TYPES.getOrDefault(kind, "application/octet-stream"))
                .result(bytes);
    }

    private static List<Sheet> sheets(Workspace.Standing standing, Context context) {
        Issue issue = new Issue(
                name(context.queryParam("owner")),
                name(context.queryParam("by")),
                LocalDate.now(ZoneId.systemDefault()).toString());
        return Sheets.of(standing.assessment(), issue, new FindingWords(show(context)));
    }

    private static Show show(Context context) {
        String units = context.queryParam("units");
        return new Show(UnitSystem.named(units == null ? "metric" : units));
    }

    /** A name for the title block: one line, and no longer than fits. */
    private static String name(@Nullable String asked) {
        String line = asked == null ? "" : asked.replaceAll("\\p{C}+", " ").strip();
        return line.length() <= LONGEST_NAME
                ? line
                : line.substring(0, LONGEST_NAME).strip();
    }

    private static Paper paper(String name) {
        return Paper.valueOf(name.toUpperCase(Locale.ROOT));
    }

    private static NotFoundResponse missing(String name) {
        return new NotFoundResponse("This car has no sheet file " + name + ".");
    }
}
