# An estimate with its interval and count: in words where nobody asked for figures (-told), with n where somebody did. $value, $low and $high are written already.
figures-none = nothing counted yet
figures-with-interval = { $value } ({ $low } to { $high }, n = { $n })
figures-without-interval = { $value } (no interval yet, n = { $n })
figures-nothing = nothing can be said yet (n = { $n })
figures-interval = { $low } to { $high }
figures-too-early = too early to say (n = { $n })
figures-told-interval = { $value } ({ $low } to { $high }, from { $n ->
    [0] no record
    [one] one record
   *[other] { $n } records
})
figures-told-without = { $value } (no interval yet, from { $n ->
    [0] no record
    [one] one record
   *[other] { $n } records
})
figures-told-nothing = nothing can be said yet ({ $n ->
    [one] one record
   *[other] { $n } records
})
figures-told-early = too early to say ({ $n ->
    [one] one record
   *[other] { $n } records
})
figures-cell-interval = { $value } ({ $low } to { $high }, from { $n })
figures-cell-without = { $value } (no interval yet, from { $n })
figures-cell-nothing = nothing can be said yet (from { $n })
figures-cell-early = too early to say (from { $n })
