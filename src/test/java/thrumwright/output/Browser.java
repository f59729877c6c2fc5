package thrumwright.output;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.URLDecoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** A browser without a window, if one is installed, driven by the protocol of its developer tools. */
final class Browser implements AutoCloseable {
    private static final Pattern LISTENS = Pattern.compile("DevTools listening on ws://([^/]+)/");
    private static final Pattern PAGE = Pattern.compile("\"webSocketDebuggerUrl\": *\"(ws://[^\"]*/page/[^\"]*)\"");
    private static final Pattern DATA = Pattern.compile("\"data\":\"([^\"]*)\"");
    private static final Pattern ANSWER = Pattern.compile("\\{\"id\":(\\d+),");

    private final Process process;
    private final Map<Integer, CompletableFuture<String>> asked = new ConcurrentHashMap<>();
    private final List<String> events = new CopyOnWriteArrayList<>();
    private final AtomicInteger count = new AtomicInteger();
    private final WebSocket socket;

    /** Where one is installed; empty if nowhere. */
    static Optional<Path> installed() {
        return Stream.of("chromium", "chromium-browser", "google-chrome")
                .map(name -> Path.of("/usr/bin", name))
                .filter(Files::isExecutable)
                .findFirst();
    }

    Browser(Path program, Path profile) throws Exception {
        process = new ProcessBuilder(
                        program.toString(),
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--no-first-run",
                        "--remote-debugging-port=0",
                        "--user-data-dir=" + profile,
                        "about:blank")
                .redirectErrorStream(true)
                .start();
        String host = host();
        String pages = Http.get(URI.create("http://" + host + "/json/list"));
        Matcher page = PAGE.matcher(pages);
        if (!page.find()) {
            throw new IOException("no page in " + pages);
        }
        socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(URI.create(page.group(1)), new Heard())
                .get(30, TimeUnit.SECONDS);
        for (String domain : List.of("Page", "Runtime", "Network", "Log")) {
            send(domain + ".enable", "{}");
        }
    }

    private String host() throws IOException {
        BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            Matcher listens = LISTENS.matcher(line);
            if (listens.find()) {
                return listens.group(1);
            }
        }
        throw new IOException("the browser ended by itself");
    }

    private static final class Http {
        static String get(URI from) throws Exception {
            return HttpClient.newHttpClient()
                    .send(HttpRequest.newBuilder(from).build(), HttpResponse.BodyHandlers.ofString())
                    .body();
        }
    }

    private final class Heard implements WebSocket.Listener {
        private final StringBuilder text = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean last) {
            text.append(part);
            if (last) {
                String message = text.toString();
                text.setLength(0);
                Matcher answer = ANSWER.matcher(message);
                if (answer.lookingAt()) {
                    asked.remove(Integer.valueOf(answer.group(1))).complete(message);
                } else {
                    events.add(message);
                }
            }
            from.request(1);
            return null;
        }
    }

    /** The page as it prints it, on paper of that size, mm, where it asks for no other: a PDF. */
    byte[] printed(double width, double height) throws Exception {
        String answer = send(
                "Page.printToPDF",
                "{\"paperWidth\":" + width / 25.4 + ",\"paperHeight\":" + height / 25.4
                        + ",\"preferCSSPageSize\":true,\"printBackground\":false}");
        Matcher data = DATA.matcher(answer);
        if (!data.find()) {
            throw new IOException("nothing printed: " + answer);
        }
        return Base64.getDecoder().decode(data.group(1));
    }

    String send(String method, String parameters) throws Exception {
        int id = count.incrementAndGet();
        CompletableFuture<String> answer = new CompletableFuture<>();
        asked.put(id, answer);
        socket.sendText("{\"id\":" + id + ",\"method\":\"" + method + "\",\"params\":" + parameters + "}", true)
                .get(30, TimeUnit.SECONDS);
        return answer.get(60, TimeUnit.SECONDS);
    }

    /** What a script's text comes to, as text without quotation marks. */
    String run(String script) throws Exception {
        String escaped = script.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", " ");
        String answer = send(
                "Runtime.evaluate",
                "{\"expression\":\"encodeURIComponent(String(" + escaped + "))\",\"returnByValue\":true}");
        Matcher value =
                Pattern.compile("\"type\":\"string\",\"value\":\"([^\"]*)\"").matcher(answer);
        if (!value.find()) {
            throw new AssertionError(script + ": " + answer);
        }
        return URLDecoder.decode(value.group(1).replace("+", "%2B"), StandardCharsets.UTF_8);
    }

    void open(URI page) throws Exception {
        send("Page.navigate", "{\"url\":\"" + page + "\"}");
        for (int i = 0;
                i < 300 && !run("document.readyState + location.protocol").equals("completefile:");
                i++) {
            Thread.sleep(50);
        }
    }

    void size(int width, int height) throws Exception {
        send(
                "Emulation.setDeviceMetricsOverride",
                "{\"width\":" + width + ",\"height\":" + height + ",\"deviceScaleFactor\":1,\"mobile\":true}");
    }

    /** What it told by itself, of a sort such as {@code Network.requestWillBeSent}. */
    List<String> told(String method) {
        return events.stream()
                .filter(event -> event.contains("\"method\":\"" + method + "\""))
                .toList();
    }

    @Override
    public void close() throws IOException {
        try {
            end();
        } catch (Exception e) {
            throw new IOException(e);
        }
    }

    private void end() throws Exception {
        List<ProcessHandle> all = process.descendants().toList();
        send("Browser.close", "{}");
        process.waitFor(30, TimeUnit.SECONDS);
        for (ProcessHandle each : all) {
            each.onExit().get(30, TimeUnit.SECONDS);
        }
    }
}
