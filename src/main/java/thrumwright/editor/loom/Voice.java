package thrumwright.editor.loom;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** The voice that a system has: a command that reads aloud what it is given. Nothing is installed for it. */
final class Voice {
    /** How each is asked to read its standard input (from memory). */
    private static final List<List<String>> KNOWN = List.of(
            List.of("spd-say", "--pipe-mode", "--wait"),
            List.of("espeak-ng", "--stdin"),
            List.of("espeak", "--stdin"),
            List.of("say", "-f", "-"),
            List.of(
                    "powershell.exe",
                    "-NoProfile",
                    "-Command",
                    "Add-Type -AssemblyName System.Speech; [Console]::InputEncoding = [Text.Encoding]::UTF8; "
                            + "(New-Object System.Speech.Synthesis.SpeechSynthesizer).Speak([Console]::In.ReadToEnd())"));

    private final List<String> command;
    private Optional<Process> speaking = Optional.empty();

    private Voice(List<String> command) {
        this.command = command;
    }

    /** That of this system; empty if it has none. */
    static Optional<Voice> ofSystem() {
        return in(Optional.ofNullable(System.getenv("PATH")).orElse(""));
    }

    /** @param folders where commands are looked for, as systems write that */
    static Optional<Voice> in(String folders) {
        return KNOWN.stream()
                .flatMap(known -> found(folders, known.get(0)).stream().map(program -> with(program, known)))
                .findFirst();
    }

    private static Voice with(Path program, List<String> known) {
        String[] command = known.toArray(String[]::new);
        command[0] = program.toString();
        return new Voice(List.of(command));
    }

    private static Optional<Path> found(String folders, String name) {
        return Arrays.stream(folders.split(Pattern.quote(java.io.File.pathSeparator)))
                .filter(folder -> !folder.isBlank())
                .flatMap(folder -> program(folder, name).stream())
                .findFirst();
    }

    private static Optional<Path> program(String folder, String name) {
        try {
            return Optional.of(Path.of(folder, name)).filter(Files::isExecutable);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** Breaks off and says something else; a voice that fails stays silent, for all of it is there to be read. */
    void say(String text) {
        stop();
        try {
            Process process = new ProcessBuilder(command)
                    .redirectOutput(Redirect.DISCARD)
                    .redirectError(Redirect.DISCARD)
                    .start();
            speaking = Optional.of(process);
            try (OutputStream words = process.getOutputStream()) {
                words.write(text.getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException silent) {
            stop();
        }
    }

    void stop() {
        speaking.ifPresent(Process::destroy);
        speaking = Optional.empty();
    }
}
