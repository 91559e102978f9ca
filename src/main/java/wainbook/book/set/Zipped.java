package wainbook.book.set;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.function.Supplier;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Files as one ZIP. Equal files in equal order give equal bytes: every date in it is the first that a ZIP can hold. A file is asked for
 * when its turn comes and is written to disk at once, so that large ones never lie in memory together.
 */
final class Zipped {

    private static final LocalDateTime FIRST = LocalDateTime.of(1980, 1, 1, 0, 0);

    private Zipped() {}

    static byte[] of(Map<String, Supplier<byte[]>> files) {
        try {
            Path growing = Files.createTempFile("handover-set", ".zip");
            try {
                write(files, growing);
                return Files.readAllBytes(growing);
            } finally {
                Files.deleteIfExists(growing);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(Map<String, Supplier<byte[]>> files, Path to) throws IOException {
        try (var zip = new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(to)))) {
            for (Map.Entry<String, Supplier<byte[]>> file : files.entrySet()) {
                var entry = new ZipEntry(file.getKey());
                entry.setTimeLocal(FIRST);
                zip.putNextEntry(entry);
                zip.write(file.getValue().get());
                zip.closeEntry();
            }
        }
    }
}
