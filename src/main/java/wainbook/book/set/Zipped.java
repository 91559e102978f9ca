package wainbook.book.set;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Files as one ZIP. Equal files in equal order give equal bytes: every date in it is the first that a ZIP can hold. */
final class Zipped {

    private static final LocalDateTime FIRST = LocalDateTime.of(1980, 1, 1, 0, 0);

    private Zipped() {}

    static byte[] of(Map<String, byte[]> files) {
        var bytes = new ByteArrayOutputStream();
        try (var zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                var entry = new ZipEntry(file.getKey());
                entry.setTimeLocal(FIRST);
                zip.putNextEntry(entry);
                zip.write(file.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
