package thrumwright.editor.files;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import thrumwright.output.SheetForm;

/**
 * Where a step sheet is to be written.
 *
 * @param path of its file, with the form's ending; the files of single pages are named after it
 */
public record SheetTarget(Path path, SheetForm form) {
    /** A file as somebody named it: its ending may ask for another form, and where it has none it is given one. */
    static SheetTarget named(Path chosen, SheetForm form) {
        String name = String.valueOf(chosen.getFileName());
        return SheetForm.named(name)
                .map(asked -> new SheetTarget(chosen, asked))
                .orElseGet(() -> new SheetTarget(chosen.resolveSibling(name + form.ending()), form));
    }

    /** All files that a sheet with so many pages makes. */
    public List<Path> files(int pages) {
        if (!form.paged()) {
            return List.of(path);
        }
        String name = String.valueOf(path.getFileName());
        return IntStream.range(0, pages)
                .mapToObj(page -> path.resolveSibling(form.pageName(name, page)))
                .toList();
    }
}
