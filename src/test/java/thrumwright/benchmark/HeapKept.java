package thrumwright.benchmark;

import com.sun.management.GarbageCollectionNotificationInfo;
import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import javax.management.NotificationEmitter;
import javax.management.openmbean.CompositeData;

/** The heap that is in use after collections, told by the virtual machine after each of them. */
final class HeapKept {
    private final AtomicLong most = new AtomicLong();
    private final Set<String> heap = ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP)
            .map(MemoryPoolMXBean::getName)
            .collect(Collectors.toSet());

    /** From now on; what is left of before counts from the next collection on. */
    void listen() {
        for (GarbageCollectorMXBean collector : ManagementFactory.getGarbageCollectorMXBeans()) {
            ((NotificationEmitter) collector)
                    .addNotificationListener((told, none) -> take((CompositeData) told.getUserData()), null, null);
        }
    }

    private void take(CompositeData told) {
        long used = GarbageCollectionNotificationInfo.from(told).getGcInfo().getMemoryUsageAfterGc().entrySet().stream()
                .filter(pool -> heap.contains(pool.getKey()))
                .mapToLong(pool -> pool.getValue().getUsed())
                .sum();
        most.accumulateAndGet(used, Math::max);
    }

    /** At most so far, bytes; what isn't yet collected counts for as long as it isn't. */
    long most() {
        return most.get();
    }
}
