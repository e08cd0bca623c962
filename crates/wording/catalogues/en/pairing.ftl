pairing-title = Pair this device
pairing-intro = Sayso was started for the home network. Type the code that stands on the screen where it was started.
pairing-not-paired = Not paired.
pairing-code = Code
pairing-code-hint = ten letters and digits
pairing-name = Name of this device
pairing-name-hint = if you like, such as Ann's phone
pairing-pair = Pair
pairing-taps-safe = Taps made on this device and not yet sent are safe; they are sent once it is paired.
pairing-no-script = Without JavaScript, what this device kept of the notebook is not cleared here; clear this site's data in the browser's settings.
pairing-plain-http = Over plain HTTP others on the same network could read along. Use it on a network you trust.
pairing-wrong = That is not the code. It stands where Sayso was started, ten letters and digits.
pairing-expired = That code is no longer good. A new one now stands where Sayso was started.
pairing-paired-title = Paired
pairing-paired = This device is paired.
pairing-all-devices = All paired devices
pairing-machine-alone = Sayso was started for this machine alone, so no device needs pairing.
pairing-devices = Devices
pairing-devices-alone = Sayso was started for this machine alone, so no other device may read this notebook.
pairing-devices-intro = These devices may read this notebook and write in it. End one that was lost, sold or lent.
pairing-this-device = (this device)
pairing-device-times = Paired { $paired }. Last seen { $seen }.
pairing-end = End it
pairing-devices-note = An ended device is refused at once. What it kept for the board is cleared when it next opens the notebook; one that never comes back keeps it. Devices not seen for { $days } days are ended by themselves.
pairing-forget-all = Forget all devices, this one too
pairing-no-such-device = No such device is paired; it may have been ended meanwhile.
pairing-unnamed = A device without a name
pairing-kind = { $kind ->
    [iphone] An iPhone
    [ipad] An iPad
    [android] An Android device
    [windows] A Windows computer
    [mac] A Mac
    [chromebook] A Chromebook
    [linux] A Linux computer
   *[other] A device
}
pairing-file = the paired devices in { $file }: { $why }; see that this program may read and write the file
pairing-file-content = { $file } does not hold paired devices ({ $why }). Bring it back from a copy, or delete it: every phone then pairs anew; nothing in the notebook is lost
