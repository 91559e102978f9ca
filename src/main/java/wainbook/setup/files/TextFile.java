package wainbook.setup.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** A file of the folder as text in UTF-8, without the byte order mark that some editors put in front. */
record TextFile(String name, String text) {

    static Optional<TextFile> read(Path folder, String name, List<Fault> faults) {
        Path path = folder.resolve(name);
        if (!Files.isRegularFile(path)) {
            faults.add(Fault.of(Place.of(name), "fileMissing", "no such file", name));
            return Optional.empty();
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(Files.readAllBytes(path)))
                    .toString();
            return Optional.of(new TextFile(name, text.startsWith("\uFEFF") ? text.substring(1) : text));
        } catch (CharacterCodingException otherEncoding) {
            faults.add(Fault.of(Place.of(name), "notUtf8", "another encoding", "UTF-8"));
        } catch (IOException unreadable) {
            faults.add(Fault.of(Place.of(name), "fileUnreadable", unreadable.getMessage(), "a readable file"));
        }
        return Optional.empty();
    }
}
