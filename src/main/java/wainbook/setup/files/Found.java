package wainbook.setup.files;

import java.util.List;
import java.util.function.Function;

/** What was found in a folder: a works, or all the faults in its files. */
public sealed interface Found {

    record Whole(WorksFiles files) implements Found {
        @Override
        public <R> R fold(
                Function<? super WorksFiles, ? extends R> whole, Function<? super List<Fault>, ? extends R> faulty) {
            return whole.apply(files);
        }
    }

    record Faulty(List<Fault> faults) implements Found {
        public Faulty {
            faults = List.copyOf(faults);
        }

        @Override
        public <R> R fold(
                Function<? super WorksFiles, ? extends R> whole, Function<? super List<Fault>, ? extends R> faulty) {
            return faulty.apply(faults);
        }
    }

    <R> R fold(Function<? super WorksFiles, ? extends R> whole, Function<? super List<Fault>, ? extends R> faulty);
}
