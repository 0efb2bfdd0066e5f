package org.brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.brakewright.model.heat.Heat;
import org.brakewright.model.heat.Recording;
import org.brakewright.model.heat.Recording.Sample;
import org.brakewright.model.heat.SpeedLog;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Logs of a logger, named in a build file; 90 km/h are 25 m/s and 1 mph is 0.44704 m/s exactly. */
class SpeedLogFileTest {
    private static final String GOOD = "time [s],speed [km/h]\n0,90\n1,72\n2.5,36\n";

    private static final String FILE = "{name: run.csv}";

    @Test
    void readsTimesAndSpeeds() {
        assertThat(samples(GOOD, FILE)).containsExactly(new Sample(0, 25), new Sample(1, 20), new Sample(2.5, 10));
    }

    @Test
    void readsTheColumnsNamed() {
        String log = "Logger 5 Hz\n\nGPS speed (mph);Clock (min);other\n50;0,0;x\n\"40\";0,05;y\n";
        List<Sample> samples = samples(log, "{name: run.csv, time_column: clock, speed_column: GPS speed}");
        assertThat(samples).hasSize(2);
        assertThat(samples.getFirst().speed()).isCloseTo(50 * 0.44704, within(1e-12));
        assertThat(samples.getLast().time()).isCloseTo(3, within(1e-12));
        assertThat(samples.getLast().speed()).isCloseTo(40 * 0.44704, within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "ISO-8859-1"})
    void readsOldAlphabets(String alphabet) {
        String log = "time [s]\tspeed [m/s]\tair [°C]\n0\t10\t20\n1\t8\t20\n";
        ReadOutcome read = read(log.getBytes(Charset.forName(alphabet)), FILE);
        assertThat(read).isInstanceOf(ReadOutcome.Usable.class);
    }

    @Test
    void passesRemarksAndEmptyLines() {
        String log = "\uFEFF# a remark\r\ntime [s],speed [km/h]\r\n0,90\r\n\r\n# paused\r\n1,72\r\n";
        assertThat(samples(log, FILE)).containsExactly(new Sample(0, 25), new Sample(1, 20));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0,90;7,80 | line 3 | gap of 7.0 s",
                "0,90;2,80;1,70 | line 4 | not in the order of time",
                "0,90;0,80 | line 3 | not in the order of time",
                "0,90;1,-3;2,70 | line 3 | below zero",
                "0,90;1,900;2,70 | line 3 | beyond that of any car",
                "0,90;1,;2,70 | line 3 | has no value",
                "0,90;1;2,70 | line 3 | has no value",
                "0,90;1,NaN;2,70 | line 3 | no number",
                "0,90;1,70 km/h;2,70 | line 3 | no number",
                "0,90;now,70;2,70 | line 3 | no number",
                "0,90 | line 1 | less than two lines"
            })
    void refusesByTheLineOfTheLog(String rows, String line, String words) {
        List<LocatedProblem> problems = problems("time [s],speed [km/h]\n" + rows.replace(';', '\n'), FILE);
        assertThat(problems).singleElement().satisfies(located -> {
            assertThat(located.problem().path()).isEqualTo("heat.schedules[0].file");
            assertThat(located.problem().message())
                    .startsWith("run.csv, " + line + ": ")
                    .contains(words);
            assertThat(located.problem().allowed()).isNotEmpty();
            assertThat(located.line()).isEqualTo(lineOf("file:"));
        });
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "time,speed [km/h] | no unit of time",
                "time [km/h],speed [km/h] | no unit of time",
                "time [s],speed | no unit of speed",
                "time [s],speed [kg] | no unit of speed",
                "t [s],v [km/h] | no line has the headings"
            })
    void refusesHeadingsWithoutUnits(String headings, String words) {
        assertThat(problems(headings + "\n0,90\n1,80\n", FILE))
                .singleElement()
                .satisfies(located -> assertThat(located.problem().message()).contains(words));
    }

    @Test
    void tellsAllFaultsAtOnce() {
        assertThat(problems("time [s],speed [km/h]\n0,90\n1,-3\n9,80\n8,70\n10,x\n", FILE))
                .extracting(located -> located.problem().message().replaceAll(":.*", ""))
                .containsExactly("run.csv, line 3", "run.csv, line 4", "run.csv, line 5", "run.csv, line 6");
    }

    /** A clock that jumped once is told where it jumped, not on every line behind it. */
    @Test
    void tellsAJumpOnce() {
        assertThat(problems("time [s],speed [km/h]\n0,90\n8,80\n1,70\n2,60\n3,50\n", FILE))
                .extracting(located -> located.problem().message().replaceAll(":.*", ""))
                .containsExactly("run.csv, line 3", "run.csv, line 4");
    }

    @Test
    void tellsTheFirstOfVeryMany() {
        List<LocatedProblem> problems = problems("time [s],speed [km/h]\n" + "0,-1\n".repeat(500), FILE);
        assertThat(problems).hasSize(21);
        assertThat(problems.getLast().problem().message()).contains("480 more faults");
    }

    @Test
    void refusesAMissingFile() {
        ReadOutcome read = BuildFile.read(text(FILE), name -> new Beside.Found.Missing("there is no file " + name));
        assertThat(((ReadOutcome.Unusable) read).problems()).singleElement().satisfies(located -> {
            assertThat(located.problem().path()).isEqualTo("heat.schedules[0].file.name");
            assertThat(located.problem().value()).isEqualTo("run.csv");
            assertThat(located.problem().message()).isEqualTo("there is no file run.csv");
        });
        assertThat(Texts.problems(text(FILE))).hasSize(1);
    }

    @Test
    void takesPointsOrAFile() {
        String both = text(FILE)
                .replace("file:", "points: [{time: 0 s, speed: 9 m/s}, {time: 1 s, speed: 8 m/s}]\n" + "      file:");
        assertThat(Texts.problems(both))
                .singleElement()
                .satisfies(located -> assertThat(located.problem().message()).contains("points and a file"));
        assertThat(Texts.problems(text(FILE).replace("      file: " + FILE + "\n", "")))
                .singleElement()
                .satisfies(located -> assertThat(located.problem().message()).contains("neither points nor a file"));
    }

    /** Whatever the bytes, the answer is a recording or faults, never an exception. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void anyBytesAreAnswered(long seed) {
        Random chance = new Random(seed);
        byte[] bytes = GOOD.repeat(20).getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < 6; i++) {
            bytes[chance.nextInt(bytes.length)] =
                    (byte) (seed % 2 == 0 ? "\",;\n.-e9".charAt(chance.nextInt(8)) : chance.nextInt());
        }
        assertThat(read(bytes, FILE)).isNotNull();
        byte[] noise = new byte[4000];
        chance.nextBytes(noise);
        assertThat(read(noise, FILE)).isInstanceOf(ReadOutcome.Unusable.class);
    }

    @Test
    void refusesAnEndlessFile() {
        byte[] bytes = new byte[LogReader.LARGEST_BYTES + 1];
        assertThat(((ReadOutcome.Unusable) read(bytes, FILE)).problems())
                .singleElement()
                .satisfies(located -> assertThat(located.problem().message()).contains("larger than 8 MiB"));
    }

    private static List<Sample> samples(String log, String file) {
        ReadOutcome read = read(log.getBytes(StandardCharsets.UTF_8), file);
        if (!(read instanceof ReadOutcome.Usable usable)) {
            throw new AssertionError(((ReadOutcome.Unusable) read).problems());
        }
        Heat heat = usable.build().heat();
        Recording recording = heat == null ? null : ((SpeedLog) heat.schedules().getFirst()).recording();
        return recording == null ? List.of() : recording.samples();
    }

    private static List<LocatedProblem> problems(String log, String file) {
        return read(log.getBytes(StandardCharsets.UTF_8), file) instanceof ReadOutcome.Unusable unusable
                ? unusable.problems()
                : List.of();
    }

    private static ReadOutcome read(byte[] log, String file) {
        return BuildFile.read(text(file), name -> new Beside.Found.There(ByteBuffer.wrap(log)));
    }

    private static String text(String file) {
        return Texts.text("twin.yaml") + """

                heat:
                  schedules:
                    - name: run
                      kind: speed_log
                      file: FILE
                """.replace("FILE", file);
    }

    private static int lineOf(String key) {
        List<String> lines = text(FILE).lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).strip().startsWith(key)) {
                return i + 1;
            }
        }
        throw new AssertionError(key);
    }
}
