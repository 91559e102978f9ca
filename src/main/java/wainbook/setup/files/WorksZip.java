package wainbook.setup.files;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import wainbook.predicate.Predicates;

/** The folder of a works packed as one file. What a stranger could pack is bounded in count, size and place. */
public final class WorksZip {

    private static final int MOST_FILES = 1_000;
    private static final int LARGEST_BYTES = 20 * 1024 * 1024;
    private static final String NAME = "([A-Za-z0-9][A-Za-z0-9 ._-]*/){0,4}[A-Za-z0-9][A-Za-z0-9 ._-]*\\.(csv|yaml)";

    /** In every file we pack, so that the same works packs to the same bytes. */
    private static final FileTime ALWAYS = FileTime.from(Instant.parse("2000-01-01T00:00:00Z"));

    private WorksZip() {}

    public static Found read(byte[] packed, Predicates predicates) {
        List<Fault> faults = new ArrayList<>();
        Map<String, byte[]> files = unpacked(packed, faults);
        if (!faults.isEmpty()) {
            return new Found.Faulty(faults);
        }
        try {
            Path folder = Files.createTempDirectory("wainbook-files");
            try {
                for (Map.Entry<String, byte[]> file : files.entrySet()) {
                    Path path = folder.resolve(file.getKey());
                    Files.createDirectories(path.getParent());
                    Files.write(path, file.getValue());
                }
                return WorksFolder.read(top(folder, files), predicates);
            } finally {
                delete(folder);
            }
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    public static byte[] pack(Map<String, String> texts) {
        var bytes = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, String> text : texts.entrySet()) {
                zip.putNextEntry(new ZipEntry(text.getKey()).setLastModifiedTime(ALWAYS));
                zip.write(text.getValue().getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        return bytes.toByteArray();
    }

    private static Map<String, byte[]> unpacked(byte[] packed, List<Fault> faults) {
        var files = new TreeMap<String, byte[]>();
        int left = LARGEST_BYTES;
        try (var zip = new ZipInputStream(new ByteArrayInputStream(packed))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (entry.isDirectory()) {
                    continue;
                }
                if (!entry.getName().matches(NAME)) {
                    faults.add(Fault.of(Place.of("zip"), "zipOther", entry.getName(), "files in .csv and .yaml"));
                    continue;
                }
                byte[] content = zip.readNBytes(left + 1);
                left -= content.length;
                if (left < 0 || files.size() >= MOST_FILES) {
                    faults.add(Fault.of(
                            Place.of("zip"),
                            "zipTooLarge",
                            entry.getName(),
                            MOST_FILES + " files and " + LARGEST_BYTES / 1024 / 1024 + " MB together"));
                    return Map.of();
                }
                files.put(entry.getName(), content);
            }
        } catch (IOException | IllegalArgumentException broken) {
            faults.add(Fault.of(Place.of("zip"), "zipBroken", String.valueOf(broken.getMessage()), "a ZIP file"));
        }
        if (files.isEmpty() && faults.isEmpty()) {
            faults.add(Fault.of(Place.of("zip"), "zipBroken", "no files", "a ZIP file with the folder of a works"));
        }
        return files;
    }

    /** Whoever packs a folder packs its name with it. */
    private static Path top(Path folder, Map<String, byte[]> files) {
        List<String> tops = files.keySet().stream()
                .map(name -> name.split("/")[0])
                .distinct()
                .toList();
        boolean one = tops.size() == 1 && !files.containsKey(tops.get(0));
        return one && files.containsKey(tops.get(0) + "/" + Part.WORKS.file()) ? folder.resolve(tops.get(0)) : folder;
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
