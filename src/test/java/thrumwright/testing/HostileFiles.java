package thrumwright.testing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Small files that are accepted and ask for as much as any can: under 10 KB, and millions of crossings. */
public final class HostileFiles {
    private static final String WIDEST = "\"width\":\"1000 cm\",\"sett\":\"10/cm\"";
    private static final String USUAL = "\"width\":\"25 cm\",\"sett\":\"3/cm\"";
    private static final int MOST = 2000;

    private HostileFiles() {}

    /** By a name each: every kind of block on the widest warp in the most rows, stacks of many, classes of many. */
    public static Map<String, String> all() {
        Map<String, String> files = new LinkedHashMap<>();
        String one = block("soumak", 0, "\"rows\":1");
        files.put("soumak on the widest warp", piece(WIDEST, one));
        files.put("picks on the widest warp", piece(WIDEST, block("plain band", 0, "\"picks\":2000")));
        files.put("hitches in the most rows", piece(USUAL, block("half hitches", 0, "\"rows\":2000")));
        for (int kind = 0; kind < KINDS.size(); kind++) {
            files.put("most of kind " + kind, piece(WIDEST, KINDS.get(kind).apply(MOST)));
        }
        files.put("many bands", piece(USUAL, many(150, i -> block("plain band", i, "\"picks\":2000"))));
        files.put("many soumaks, wide", piece(WIDEST, many(150, i -> block("soumak", i, "\"rows\":2000"))));
        files.put("many hitches", piece(USUAL, many(150, i -> block("half hitches", i, "\"rows\":3"))));
        files.put("wide looms", group(piece(WIDEST, one), 200));
        files.put("looms with bands", group(piece(USUAL, many(5, i -> block("plain band", i, "\"picks\":2000"))), 200));
        files.put(
                "looms that all differ",
                differing(piece(WIDEST, one + "," + block("half hitches", 1, "\"rows\":3")), 200));
        return files;
    }

    private static String differing(String piece, int looms) {
        return group(piece, many(looms, i -> "{\"width\":\"" + (999 - i) + " cm\"}"));
    }

    /** One of endlessly many, by its seed. */
    public static String seeded(long seed) {
        Random random = new Random(seed);
        String warp = random.nextBoolean()
                ? WIDEST
                : "\"width\":\"" + (20 + random.nextInt(9000)) + " mm\",\"sett\":\"" + (1 + random.nextInt(10))
                        + "/cm\"";
        int blocks = 1 + random.nextInt(random.nextBoolean() ? 4 : 60);
        List<String> stack = new ArrayList<>();
        for (int i = 0; i < blocks; i++) {
            int rows = random.nextBoolean() ? MOST : 1 + random.nextInt(random.nextBoolean() ? 5 : 600);
            String block = KINDS.get(random.nextInt(KINDS.size())).apply(rows);
            stack.add(block.replace("\"id\":\"b0\"", "\"id\":\"b" + i + "\""));
        }
        String piece = piece(warp, String.join(",", stack));
        return random.nextInt(4) == 0 ? group(piece, 1 + random.nextInt(200)) : piece;
    }

    /** Each kind of block, with so many rows where it has any. */
    private static final List<IntFunction<String>> KINDS = List.of(
            rows -> block("plain band", 0, "\"picks\":" + rows),
            rows -> block("soumak", 0, "\"over\":24,\"under\":23,\"rows\":" + rows),
            rows -> block("soumak", 0, "\"countered\":true,\"rows\":" + rows),
            rows -> block("half hitches", 0, "\"rows\":" + rows),
            rows -> block("twining", 0, "\"rows\":" + rows),
            rows -> block("twining", 0, "\"countered\":true,\"group\":24,\"rows\":" + rows),
            rows -> block("ordering cord", 0, "\"picks\":" + rows),
            rows -> block("spread header", 0, "\"strands\":12,\"picks\":" + rows),
            rows -> block("hemstitching", 0, "\"group\":1"),
            rows -> bare("warp finish", "\"ends\":\"plied\",\"group\":1,\"hanging\":\"1 m\""),
            rows -> bare("warp finish", "\"ends\":\"darned\",\"hanging\":\"5 cm\""),
            rows -> bare("rows of knots", "\"rows\":20,\"group\":2,\"split\":true,\"hanging\":\"1 m\""),
            rows -> bare("turned ends", "\"over\":6,\"bothWays\":true,\"hanging\":\"5 cm\""),
            rows -> bare("warp loops", "\"round\":\"rod\",\"thick\":\"1 cm\""),
            rows -> block("wrapped tassels", 0, "\"group\":2,\"turns\":60,\"hanging\":\"90 cm\""),
            rows -> bare("open warp", "\"height\":\"2 m\""),
            rows -> bare("hem fold", "\"bar\":\"1 cm\""));

    private static String block(String kind, int id, String more) {
        return "{\"kind\":\"" + kind + "\",\"id\":\"b" + id + "\",\"of\":\"weft\"," + more + "}";
    }

    private static String bare(String kind, String more) {
        return "{\"kind\":\"" + kind + "\",\"id\":\"b0\"," + more + "}";
    }

    private static String many(int count, IntFunction<String> each) {
        return IntStream.range(0, count).mapToObj(each).collect(Collectors.joining(","));
    }

    private static String piece(String warp, String start) {
        return "{\"thrumwright\":1,\"title\":\"Mud bank\",\"loom\":{\"open\":\"60 cm\",\"clearance\":\"6 cm\","
                + "\"posts\":{\"diameter\":\"22 mm\",\"gap\":\"30 mm\"},"
                + "\"workingRoom\":\"12 cm\",\"warpPerEnd\":\"80 cm\"},\"warp\":{" + warp + ",\"yarn\":\"cord\"},"
                + "\"yarns\":[{\"id\":\"cord\",\"name\":\"Cord\",\"colour\":\"#e9e1cf\",\"fibre\":\"cotton\","
                + "\"thickness\":{\"diameter\":\"0.6 mm\"},\"firmness\":\"hard\"},"
                + "{\"id\":\"mud\",\"name\":\"Mud\",\"colour\":\"#8a6f57\",\"fibre\":\"wool\","
                + "\"thickness\":{\"wraps\":5,\"in\":\"1 cm\"}}],"
                + "\"design\":{\"height\":\"25 cm\",\"firstStripe\":\"mud\",\"lastStripe\":\"mud\"},"
                + "\"start\":[" + start + "]}";
    }

    private static String group(String piece, int looms) {
        return group(piece, many(looms, i -> "{}"));
    }

    private static String group(String piece, String members) {
        return "{\"thrumwrightClass\":1,\"title\":\"Many\",\"piece\":" + piece + ",\"members\":[" + members + "]}";
    }
}
